import type { ButtonLabel } from '../assistant/outgoing.ts';
import type { Reply } from '../assistant/replies/reply.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import type { DutyLine } from '../planning/duty-line.ts';

/** Whom a text is for: names, units, the clock and the moment it is read. */
export interface Reader {
  readonly greenhouse: Greenhouse;
  readonly nowMs: number;
}

/** One language: every reply as data becomes text, in the greenhouse's spoken units. */
export interface Wording {
  readonly reply: (reply: Reply, reader: Reader) => string;
  /** A button's words, short enough for a phone: at most 30 characters. */
  readonly button: (label: ButtonLabel, reader: Reader) => string;
  /** What is to be done, without the reason: `Top up North bench with up to 43 L (4½ cans), to the brim`. */
  readonly duty: (line: DutyLine, reader: Reader) => string;
  /** The numbers behind a duty, in one sentence that a layman follows. */
  readonly why: (line: DutyLine, reader: Reader) => string;
}

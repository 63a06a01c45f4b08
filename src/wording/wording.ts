import type { ButtonLabel } from '../assistant/outgoing.ts';
import type { Picture } from '../assistant/replies/picture.ts';
import type { Reply } from '../assistant/replies/reply.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import type { LocalDate } from '../greenhouse/local-time.ts';
import type { Language } from '../greenhouse/member.ts';
import type { Quantity } from '../greenhouse/quantity.ts';
import type { DutyLine } from '../planning/duty-line.ts';

/** Whom a text is for: names, units, the clock and the moment it is read. */
export interface Reader {
  readonly greenhouse: Greenhouse;
  readonly nowMs: number;
  /** Whoever reads it, where it is one member: they are spoken to as `you`. */
  readonly handle?: string;
}

/** What stands in a picture, in the reader's language and units. */
export interface PictureWords {
  readonly title: string;
  /** All that the picture tells, for whoever does not see it; one line. */
  readonly alt: string;
  readonly label: Readonly<Record<PictureLabel, string>>;
  /** What a quantity's axis counts, its unit included: `EC, mS/cm`. */
  readonly axis: (quantity: Quantity) => string;
  /** A value in its quantity's stored unit, as the axis counts it. */
  readonly onAxis: (quantity: Quantity, value: number) => number;
  /** A number beside the axis, as the language writes it. */
  readonly number: (value: number) => string;
  /** A day under the axis: `4 May`. */
  readonly day: (date: LocalDate) => string;
}

/** Draws a picture as PNG, in the reader's language and on the greenhouse's wall clock. */
export type DrawPicture = (
  picture: Picture,
  language: Language,
  reader: Reader,
) => Promise<Uint8Array>;

export type PictureLabel =
  | 'brim'
  | 'low-mark'
  | 'estimate'
  | 'expected'
  | 'topped-up'
  | 'read-off'
  | 'wanted'
  | 'changed';

/** One language: every reply as data becomes text, in the greenhouse's spoken units. */
export interface Wording {
  readonly reply: (reply: Reply, reader: Reader) => string;
  /** A button's words, short enough for a phone: at most 30 characters. */
  readonly button: (label: ButtonLabel, reader: Reader) => string;
  /** What is to be done, without the reason: `Top up North bench with up to 43 L (4½ cans), to the brim`. */
  readonly duty: (line: DutyLine, reader: Reader) => string;
  /** The words in and around a picture. */
  readonly picture: (picture: Picture, reader: Reader) => PictureWords;
  /** The numbers behind a duty, in one sentence that a layman follows. */
  readonly why: (line: DutyLine, reader: Reader) => string;
}

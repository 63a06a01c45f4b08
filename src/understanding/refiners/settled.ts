import type { System } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import type { Mood } from '../moods/mood.ts';
import type { Assumption } from '../statement.ts';
import type { TimeMark } from '../times/time-mark.ts';

/** Why the system must be asked: the systems to offer, and what stood where a name should. */
interface AskSystem {
  /** What stood there is the name of none. */
  readonly isNoName?: true;
  readonly offer: readonly System[];
  readonly written: string | null;
}

/** A fact with its system, time and mood found. */
export interface Settled {
  readonly fact: Fact;
  /** null: of the whole greenhouse. */
  readonly systems: readonly System[] | null;
  readonly askSystem: AskSystem | null;
  readonly atMs: number;
  readonly mark: TimeMark | null;
  readonly mood: Mood | null;
  readonly assumptions: readonly Assumption[];
}

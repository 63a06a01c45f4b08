import type { DutyKind } from '../greenhouse/duty.ts';
import type { SaidIn, Supply, Trouble } from '../greenhouse/entry.ts';
import type { Quantity } from '../greenhouse/quantity.ts';
import type { SystemId } from '../greenhouse/system.ts';
import type { Measure } from './numbers/measure.ts';
import type { DoubtReason } from './statement.ts';
import type { TimeMark } from './times/time-mark.ts';

/** How much was said, before it is known of which system. */
export type Amount =
  | { readonly kind: 'measure'; readonly measure: Measure }
  /** level: so far below the brim. */
  | { readonly kind: 'below-brim'; readonly measure: Measure }
  | { readonly kind: 'brim' }
  | { readonly kind: 'nothing-in-it' }
  /** A plain value in the quantity's unit. */
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'missing' };

/** Something that a clause says, found by a recogniser; the refiners find out of which system, when, and whether it may be. */
export interface Fact {
  readonly quantity: Quantity;
  readonly amount: Amount;
  /** The term it hangs on: its place decides system, time and mood. */
  readonly at: number;
  /** First and last term that it was read from. */
  readonly from: number;
  readonly to: number;
  readonly approximate?: boolean;
  readonly product?: string;
  readonly probe?: string;
  readonly read?: number;
  readonly of?: Supply;
  readonly duty?: DutyKind;
  /** The chore's name, where the duty is one. */
  readonly chore?: string;
  readonly note?: string;
  readonly trouble?: Trouble;
  /** Before or after a deed told in the same message. */
  readonly phase?: 'before' | 'after';
  /** A number without a unit, read as the greenhouse's unit of volume. */
  readonly bareVolume?: boolean;
  readonly shorthand?: boolean;
  /** `each` is said, so an amount holds for every system named. */
  readonly each?: boolean;
  /** Of what `each` is plainly said; else it may be of the parts of one system. */
  readonly eachOf?: 'products' | 'systems';
  /** Named by a device, a crop or a chore that only this system has. */
  readonly byDevice?: SystemId;
  /** Whose it is by its place in a row, whatever is named beside it. */
  readonly inTurn?: SystemId;
  /** Of another system than the one named beside it; nobody said of which. */
  readonly isOfOther?: boolean;
  /** Other facts of the same shared amount: `30 ml of A and B`. */
  readonly shared?: readonly string[];
  /** restored: told together with its outage, `from 2 to 4`. */
  readonly ends?: boolean;
  /** When it was, where that follows from more than one thing said: `for 2 hours last night`. */
  readonly time?: TimeMark;
  /** Understood, but not to be believed without asking. */
  readonly doubt?: DoubtReason | null;
  /** level: filled up to it, and the litres were not told. */
  readonly toMark?: boolean;
  /** The unit or container of the entry that it is more of, or the same as. */
  readonly saidIn?: SaidIn;
  readonly because: string;
}

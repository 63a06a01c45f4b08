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
  readonly approximate?: boolean | undefined;
  readonly product?: string | undefined;
  readonly probe?: string | undefined;
  readonly read?: number | undefined;
  readonly of?: Supply | undefined;
  readonly duty?: DutyKind | undefined;
  /** The chore's name, where the duty is one. */
  readonly chore?: string | undefined;
  readonly note?: string | undefined;
  readonly trouble?: Trouble | undefined;
  /** Before or after a deed told in the same message. */
  readonly phase?: 'before' | 'after' | undefined;
  /** A number without a unit, read as the greenhouse's unit of volume. */
  readonly bareVolume?: boolean | undefined;
  readonly shorthand?: boolean | undefined;
  /** `each` is said, so an amount holds for every system named. */
  readonly each?: boolean | undefined;
  /** Of what `each` is plainly said; else it may be of the parts of one system. */
  readonly eachOf?: 'products' | 'systems' | undefined;
  /** Named by a device, a crop or a chore that only this system has. */
  readonly byDevice?: SystemId | undefined;
  /** Whose it is by its place in a row, whatever is named beside it. */
  readonly inTurn?: SystemId | undefined;
  /** Of another system than the one named beside it; nobody said of which. */
  readonly isOfOther?: boolean | undefined;
  /** Other facts of the same shared amount: `30 ml of A and B`. */
  readonly shared?: readonly string[] | undefined;
  /** restored: told together with its outage, `from 2 to 4`. */
  readonly ends?: boolean | undefined;
  /** When it was, where that follows from more than one thing said: `for 2 hours last night`. */
  readonly time?: TimeMark | undefined;
  /** Understood, but not to be believed without asking. */
  readonly doubt?: DoubtReason | null | undefined;
  /** level: filled up to it, and the litres were not told. */
  readonly toMark?: boolean | undefined;
  /** The unit or container of the entry that it is more of, or the same as. */
  readonly saidIn?: SaidIn | undefined;
  readonly because: string;
}

/**
 * The same with every key, in one order: facts are made in some sixty places, each with the keys that it knows of,
 * and are looked through by all who refine them. V8 looks a key up fast only where a place meets no more than four shapes.
 */
export function inFull(fact: Fact): Fact {
  return {
    quantity: fact.quantity,
    amount: fact.amount,
    at: fact.at,
    from: fact.from,
    to: fact.to,
    approximate: fact.approximate,
    product: fact.product,
    probe: fact.probe,
    read: fact.read,
    of: fact.of,
    duty: fact.duty,
    chore: fact.chore,
    note: fact.note,
    trouble: fact.trouble,
    phase: fact.phase,
    bareVolume: fact.bareVolume,
    shorthand: fact.shorthand,
    each: fact.each,
    eachOf: fact.eachOf,
    byDevice: fact.byDevice,
    inTurn: fact.inTurn,
    isOfOther: fact.isOfOther,
    shared: fact.shared,
    ends: fact.ends,
    time: fact.time,
    doubt: fact.doubt,
    toMark: fact.toMark,
    saidIn: fact.saidIn,
    because: fact.because,
  };
}

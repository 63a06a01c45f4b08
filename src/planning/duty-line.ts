import type { Duty } from '../greenhouse/duty.ts';
import type { LocalDate } from '../greenhouse/local-time.ts';
import type { Quantity } from '../greenhouse/quantity.ts';
import type { AdviceReason, MixReason } from './advice-reason.ts';
import type { Cautions } from './caution.ts';
import type { WorkStep } from './work-step.ts';

/** A duty and the numbers behind it. */
export interface DutyLine {
  readonly duty: Duty;
  /** From this date on it is worth doing on a trip that is made anyway; null: never early. */
  readonly ridesFrom: LocalDate | null;
  /** Due, it may still wait for a trip until this date; absent: it makes a trip of its own. */
  readonly waitsUntil?: LocalDate;
  readonly reason: Reason;
  /** How it is done, where that has an order. */
  readonly steps?: readonly WorkStep[];
  readonly cautions?: Cautions;
}

export type Reason =
  | AdviceReason
  | {
      readonly kind: 'water';
      /** False: nobody has said yet how full it is. */
      readonly isLevelKnown: boolean;
      readonly litresNow: number;
      readonly litresSd: number;
      readonly usePerDayL: number;
      readonly lowL: number;
      readonly lowOnEarly: LocalDate | null;
      readonly lowOnLikely: LocalDate | null;
      /** Where it should be filled to. */
      readonly fillToL: number;
      /** Topping it up does not tell where the water stands, and that is in doubt by now. */
      readonly wantsLevel: boolean;
      /** Why the top-up is to be as strong as it is; absent where no strength is known. */
      readonly mix?: MixReason;
    }
  | {
      readonly kind: 'not-measured';
      readonly quantities: readonly Quantity[];
      /** null: never. */
      readonly lastOn: LocalDate | null;
      /** What the quantity does that wants the check; null: unknown, or steady. */
      readonly drift: {
        readonly quantity: 'ph' | 'ec';
        readonly perDay: number;
        readonly expected: number;
        readonly chanceOut: number;
        readonly lowest: number;
        readonly highest: number;
      } | null;
      /** What the interval rests on; null: a quantity was never measured. */
      readonly rhythm: CheckRhythm | null;
    }
  | {
      readonly kind: 'chore';
      readonly everyDays: number;
      readonly lastDoneOn: LocalDate | null;
    };

/** How often the quantity that wants it soonest is measured, and why so often. */
export interface CheckRhythm {
  readonly quantity: 'ph' | 'ec';
  readonly everyDays: number;
  readonly lowest: number;
  readonly highest: number;
  /** By the day that it is due; null: too few readings to know how it moves here. */
  readonly foreseen: {
    readonly perDay: number;
    readonly expected: number;
    readonly chanceOut: number;
  } | null;
  /** The chance of being outside from which a look is worth while. */
  readonly worthALookChance: number;
}

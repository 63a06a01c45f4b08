import type { Entry, Supply } from '../../greenhouse/entry.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { WantedQuantity } from '../../greenhouse/set-up/set-up-change.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Cautions } from '../../planning/caution.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import type { SeasonFigures } from '../../planning/season.ts';
import type { Surprise } from '../../planning/surprises/surprise.ts';
import type { Side } from '../../understanding/asking/plain-ask.ts';
import type { AdviceAnswer, Care } from './advice.ts';

/** A system's last value of a quantity, and between what it should be. */
export interface Against {
  readonly system: SystemId;
  /** null: never measured. */
  readonly value: number | null;
  readonly lowest: number;
  readonly highest: number;
}

/** What helps a value back between its bounds. */
export type Remedy =
  /** An acid or an alkali; `mayDose`: whoever asks was shown how. */
  | { readonly kind: 'reagent'; readonly product: 'ph-down' | 'ph-up'; readonly mayDose: boolean }
  | { readonly kind: 'nutrients' }
  | { readonly kind: 'plain-water' }
  | { readonly kind: 'care'; readonly advice: Care };

/** Answers to what somebody asks who stands in the greenhouse and does not know. */
export type PlainAnswer =
  | {
      readonly kind: 'containers';
      readonly containers: readonly { readonly name: string; readonly litres: number }[];
    }
  | { readonly kind: 'grown'; readonly systems: readonly SystemId[] }
  | { readonly kind: 'water-source' }
  | {
      readonly kind: 'urgent';
      /** null: all. */
      readonly systems: readonly SystemId[] | null;
      readonly by: LocalDate | null;
      readonly out: OutNow;
      /** What must not wait: until the day spoken of, or at all. */
      readonly now: readonly DutyLine[];
      readonly waits: readonly { readonly line: DutyLine; readonly until: LocalDate }[];
      /** The next, where nothing is due. */
      readonly next: DutyLine | null;
    }
  | {
      readonly kind: 'out-of-range';
      readonly quantity: WantedQuantity;
      readonly side: Side;
      readonly remedy: Remedy;
      readonly against: readonly Against[];
      /** What those that are out of range need now; null: none is, or no amount helps. */
      readonly doses: Extract<AdviceAnswer, { kind: 'how-much' }> | null;
      readonly cautions: Cautions | null;
    }
  | {
      readonly kind: 'why-reading';
      readonly quantity: WantedQuantity;
      readonly side: Side;
      readonly against: readonly Against[];
    }
  | {
      readonly kind: 'room';
      readonly systems: readonly {
        readonly system: SystemId;
        /** null: nobody has said yet how full it is. */
        readonly litres: number | null;
        readonly roomL: number;
        /** The roots in the air bear no more at once. */
        readonly isBounded: boolean;
      }[];
    }
  | {
      readonly kind: 'first';
      readonly out: OutNow;
      /** null: nothing is to be done today by whoever asks. */
      readonly line: DutyLine | null;
      /** What comes after it today, and how much in all. */
      readonly then: DutyLine | null;
      readonly thenCount: number;
      /** The next, where nothing is due. */
      readonly next: DutyLine | null;
      readonly leftToGrower: readonly DutyLine[];
    }
  /** How full each is whose level is known, by its share of the brim: the one asked for first. */
  | {
      readonly kind: 'fullest';
      readonly side: Side;
      readonly systems: readonly {
        readonly system: SystemId;
        readonly litres: number;
        readonly share: number;
      }[];
    }
  | {
      readonly kind: 'why-use';
      readonly side: Side;
      readonly systems: readonly {
        readonly system: SystemId;
        readonly usePerDayL: number;
        /** Put in over the last days, and over as many before them. */
        readonly lately: {
          readonly days: number;
          readonly litres: number;
          readonly beforeL: number;
        };
        /** Where the use no longer fits what was learned. */
        readonly found: Surprise | null;
      }[];
    }
  | DaysTold
  /** How each works, what grows in it, and what it drinks. */
  | {
      readonly kind: 'compared';
      readonly systems: readonly {
        readonly figures: SeasonFigures;
        readonly usePerDayL: number;
      }[];
    }
  | { readonly kind: 'which-value' };

/** What is out by now. */
export type OutNow = readonly {
  readonly of: Supply;
  readonly system: SystemId | null;
  readonly sinceMs: number;
}[];

/** What was done in a stretch of days, and what was not. */
export interface DaysTold {
  readonly kind: 'days-told';
  readonly from: LocalDate;
  readonly to: LocalDate;
  /** On how many of them somebody logged something, and who on how many. */
  readonly days: number;
  readonly by: readonly { readonly handle: string; readonly days: number }[];
  readonly systems: readonly {
    readonly system: SystemId;
    readonly toppedUpL: number;
    readonly changes: number;
    /** Times that the pH or the EC was measured. */
    readonly checks: number;
    readonly dosedMl: number;
    readonly harvestG: number;
  }[];
  /** What went wrong or could not be done. */
  readonly troubles: readonly Entry[];
  /** Due on one of them or before, and still open. */
  readonly missed: readonly DutyLine[];
}

import type { ProductAmount } from '../../greenhouse/duty.ts';
import type { Entry, Supply } from '../../greenhouse/entry.ts';
import type { ConductivityUnit } from '../../greenhouse/greenhouse.ts';
import type { ReferenceQuantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { DoseBasis } from '../../planning/advice-reason.ts';
import type { Cautions } from '../../planning/caution.ts';
import type { DoseRefusal } from '../../planning/dose-refusal.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import type { OutageProspect } from '../../planning/outage-prospect.ts';
import type { Surprise } from '../../planning/surprises/surprise.ts';
import type { ProbeVerdict } from '../../science/ph/probe-calibration.ts';

/** A dose that is not told, and why. */
export interface RefusedDose {
  readonly system: SystemId;
  readonly quantity: 'ph' | 'ec';
  /** null: never measured. */
  readonly value: number | null;
  readonly because: DoseRefusal;
}

/** What a receipt says about what comes next. */
export type AdviceRemark =
  /** Work that the entry calls for. */
  | { readonly kind: 'next-work'; readonly lines: readonly DutyLine[] }
  /** Work with strong acid or alkali that the member was not shown: it waits for the grower. */
  | { readonly kind: 'waits-for-grower'; readonly lines: readonly DutyLine[] }
  | { readonly kind: 'dose-refused'; readonly refused: RefusedDose }
  | {
      readonly kind: 'measure-after-dose';
      readonly system: SystemId;
      readonly quantity: 'ph' | 'ec';
      readonly fromMin: number;
      readonly toMin: number;
    }
  | {
      readonly kind: 'probe-state';
      readonly probe: string;
      readonly measures: ReferenceQuantity;
      /** Of a perfect probe's; null: one reference does not tell. */
      readonly slopeShare: number | null;
      /** mV at pH 7; null for other quantities. */
      readonly offsetMv: number | null;
      readonly verdict: ProbeVerdict;
      /** Readings since the last good calibration that may be off. */
      readonly suspect: readonly Entry[];
    }
  | { readonly kind: 'meters-disagree'; readonly one: Entry; readonly other: Entry }
  | { readonly kind: 'care'; readonly entry: Entry; readonly advice: Care };

/** What helps against water too warm or too cold, or short of air. */
export type Care = 'cool-the-water' | 'warm-the-water' | 'more-air';

export type AdviceAlert =
  | {
      readonly kind: 'outage';
      readonly of: Supply;
      readonly sinceMs: number;
      /** In the order in which to act. */
      readonly systems: readonly OutageProspect[];
      readonly unaffected: readonly SystemId[];
      readonly cautions: Cautions;
    }
  | {
      readonly kind: 'outage-reminder';
      readonly of: Supply;
      readonly prospect: OutageProspect;
      /** Before the earliest bound, or at the likely end. */
      readonly stage: 'soon' | 'now';
    }
  | {
      readonly kind: 'all-clear';
      readonly of: Supply;
      readonly sinceMs: number;
      readonly untilMs: number;
      readonly systems: readonly {
        readonly system: SystemId;
        readonly harm: 'none' | 'perhaps' | 'likely';
      }[];
    }
  /** Work that a helper must not do has come up. */
  | { readonly kind: 'dose-wanted'; readonly lines: readonly DutyLine[]; readonly askedBy: string }
  /** Something does not fit what was learned. */
  | { readonly kind: 'surprise'; readonly surprise: Surprise };

export type AdviceAnswer =
  | {
      readonly kind: 'how-much';
      /** What somebody asked whether to give, where it is not as told. */
      readonly wanted?: {
        readonly product: string;
        readonly mL: number;
        /** More than may ever go in within a day; null: less than that. */
        readonly beyondMl: number | null;
      };
      /** What it is to come to: where that was reckoned with, and where it lies outside what is wanted. */
      readonly target?: {
        readonly quantity: 'ph' | 'ec';
        readonly value: number;
        readonly aimed: readonly SystemId[];
        readonly outside: readonly SystemId[];
      };
      readonly lines: readonly DutyLine[];
      readonly leftToGrower: readonly DutyLine[];
      readonly refused: readonly RefusedDose[];
      readonly inRange: readonly {
        readonly system: SystemId;
        readonly quantity: 'ph' | 'ec';
        readonly value: number;
      }[];
    }
  | {
      readonly kind: 'mix';
      readonly litres: number;
      readonly ecMsPerCm: number;
      readonly waterEcMsPerCm: number;
      /** null: the formula does not hold there, or there is no concentrate. */
      readonly concentrates: readonly ProductAmount[] | null;
      readonly basis: DoseBasis;
      readonly cautions: Cautions;
    }
  | {
      readonly kind: 'converted';
      readonly said: { readonly value: number; readonly unit: ConductivityUnit };
      readonly ecMsPerCm: number;
      /** The household's factor, and what meters of other factors show. */
      readonly tdsFactor: number;
      readonly others: readonly {
        readonly factor: number;
        readonly ecMsPerCm: number;
        readonly ppm: number;
      }[];
    }
  | {
      readonly kind: 'fill-with-pump';
      readonly ratedLPerH: number;
      readonly systems: readonly {
        readonly system: SystemId;
        readonly litres: number;
        /** At the rated flow, and with the losses of lift and hose that are usual. */
        readonly leastMin: number;
        readonly mostMin: number;
        /** What the set-up says it takes now. */
        readonly usualMin: number | null;
      }[];
    }
  | {
      readonly kind: 'without-supply';
      readonly of: Supply;
      readonly systems: readonly OutageProspect[];
      readonly unaffected: readonly SystemId[];
    };

import type { Supply } from '../../greenhouse/entry.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { WantedQuantity } from '../../greenhouse/set-up/set-up-change.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Cautions } from '../../planning/caution.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
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
      readonly out: readonly {
        readonly of: Supply;
        readonly system: SystemId | null;
        readonly sinceMs: number;
      }[];
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
  | { readonly kind: 'which-value' };

import type { Chore, Greenhouse, RiskSetting, SpokenUnits } from '../greenhouse.ts';
import type { LocalDate, LocalTime } from '../local-time.ts';
import type { Language } from '../member.ts';
import type { Range, System, SystemId } from '../system.ts';

/** What of a system is a plain number: litres to the brim and at the low mark, cm at the brim, plants. */
export type SystemFigure = 'brimL' | 'lowL' | 'depthCm' | 'plants';

export type WantedQuantity = 'ph' | 'ec' | 'water-temperature';

/** What was planted, and when. */
export interface Planting {
  readonly crop: string;
  readonly plants: number;
  readonly on: LocalDate;
}

/** One change of the set-up, as a member wishes it. Plain data: it is shown, made, kept and undone. */
export type SetUpChange =
  | { readonly kind: 'chore-added'; readonly chore: Chore }
  | { readonly kind: 'chore-moved'; readonly name: string; readonly everyDays: number }
  | { readonly kind: 'chore-dropped'; readonly name: string }
  | { readonly kind: 'system-added'; readonly system: System }
  | { readonly kind: 'system-renamed'; readonly system: SystemId; readonly name: string }
  | { readonly kind: 'system-dropped'; readonly system: SystemId }
  | {
      readonly kind: 'figure-set';
      readonly system: SystemId;
      readonly figure: SystemFigure;
      readonly value: number;
    }
  | {
      readonly kind: 'range-set';
      readonly system: SystemId;
      readonly quantity: WantedQuantity;
      readonly range: Range;
    }
  | { readonly kind: 'alias-added'; readonly system: SystemId; readonly alias: string }
  | { readonly kind: 'alias-dropped'; readonly system: SystemId; readonly alias: string }
  | ({ readonly kind: 'planted'; readonly system: SystemId } & Planting)
  /** What grew in it was taken out. */
  | { readonly kind: 'cleared'; readonly system: SystemId; readonly on: LocalDate }
  | { readonly kind: 'language-set'; readonly handle: string; readonly language: Language }
  /** null: the household's again. */
  | {
      readonly kind: 'units-set';
      readonly handle: string;
      readonly units: Partial<SpokenUnits> | null;
    }
  | { readonly kind: 'container-set'; readonly name: string; readonly litres: number }
  | { readonly kind: 'container-dropped'; readonly name: string }
  | { readonly kind: 'morning-set'; readonly morning: LocalTime }
  | { readonly kind: 'risk-set'; readonly risk: RiskSetting }
  /** Bought: so much more than there was. */
  | { readonly kind: 'stock-added'; readonly product: string; readonly mL: number }
  /** Counted: so much is left now. */
  | { readonly kind: 'stock-counted'; readonly product: string; readonly mL: number }
  /** So much a rain butt holds. */
  | { readonly kind: 'butt-set'; readonly litres: number; readonly isUsual: boolean }
  /** So much is in it now: a share of its size, or litres. */
  | {
      readonly kind: 'butt-counted';
      readonly held: { readonly share: number } | { readonly litres: number };
      readonly atMs: number;
    }
  /** Was shown how to handle strong acid and alkali, or is to leave them alone. */
  | { readonly kind: 'acids-shown'; readonly handle: string; readonly isShown: boolean }
  /** The whole greenhouse set up anew. */
  | { readonly kind: 'set-up-anew'; readonly greenhouse: Greenhouse };

/** Why a change cannot be made. */
export type UnfitChange =
  | { readonly kind: 'no-such-chore' }
  | { readonly kind: 'chore-there' }
  | { readonly kind: 'name-taken'; readonly by: string }
  | { readonly kind: 'only-system' }
  | { readonly kind: 'low-above-brim' }
  | { readonly kind: 'no-such-container' }
  | { readonly kind: 'has-chores'; readonly chores: readonly string[] }
  | { readonly kind: 'no-butt' }
  | { readonly kind: 'more-than-butt'; readonly litres: number }
  | { readonly kind: 'same-already' }
  | { readonly kind: 'out-of-bounds' };

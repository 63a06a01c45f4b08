import type { Entry } from '../greenhouse/entry.ts';
import type { LocalDate } from '../greenhouse/local-time.ts';
import type { Quantity } from '../greenhouse/quantity.ts';

/** Why no amount is told. */
export type DoseRefusal =
  | { readonly kind: 'not-measured'; readonly lastOn: LocalDate | null }
  /** Not calibrated within the days that it can be trusted for; null: never, or no probe is known. */
  | {
      readonly kind: 'stale-probe';
      readonly probe: string | null;
      readonly calibratedOn: LocalDate | null;
      readonly trustedDays: number;
    }
  | { readonly kind: 'unfit-probe'; readonly probe: string }
  | { readonly kind: 'unknown-volume'; readonly litres: number; readonly litresSd: number }
  | { readonly kind: 'meters-disagree'; readonly one: Entry; readonly other: Entry }
  | { readonly kind: 'looks-like-slip'; readonly entry: Entry; readonly before: Entry }
  | {
      readonly kind: 'beyond-bound';
      readonly product: string;
      readonly mL: number;
      readonly mostMl: number;
    }
  | { readonly kind: 'not-in-stock'; readonly product: string; readonly neededMl: number }
  /** A dose was given and not yet measured. */
  | { readonly kind: 'just-dosed'; readonly atMs: number; readonly readyAtMs: number }
  /** Nutrients move the pH: strength is set right first. */
  | { readonly kind: 'strength-first' }
  /** Too strong: no dose helps, water does. */
  | { readonly kind: 'too-strong'; readonly waterL: number; readonly fits: boolean }
  | { readonly kind: 'outside-formula'; readonly quantity: Quantity };

import type { ProductAmount } from '../greenhouse/duty.ts';
import type { DoseReason } from './advice-reason.ts';
import type { DoseRefusal } from './dose-refusal.ts';

/** A dose that is safe to tell: what to add now, one product after the other, and why. */
export interface PlannedDose {
  readonly ok: true;
  readonly amounts: readonly ProductAmount[];
  readonly reason: DoseReason;
}

export interface RefusedAmount {
  readonly ok: false;
  readonly because: DoseRefusal;
}

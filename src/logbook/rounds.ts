import type { Duty } from '../greenhouse/duty.ts';
import type { LocalDate } from '../greenhouse/local-time.ts';

/** A round that went out, and what it asked for. */
export interface PastRound {
  readonly date: LocalDate;
  readonly sentAtMs: number;
  readonly duties: readonly Duty[];
  /** The numbers of its messages; absent where it was passed over. */
  readonly outgoing?: readonly number[];
}

import type { LocalDate } from './local-time.ts';
import type { SystemId } from './system.ts';

export type DutyKind =
  | 'top-up'
  | 'check'
  | 'dose'
  | 'reservoir-change'
  | 'calibration'
  | 'aeration'
  | 'clean'
  | 'chore';

/** What a top-up is mixed to: the water alone, half of the system's strength, or all of it. */
export type MixStrength = 'plain' | 'half' | 'full';

/** An amount of one product, mL. */
export interface ProductAmount {
  readonly product: string;
  readonly mL: number;
}

export type CleanPart = 'air-stones' | 'pump-filter';

/** Something that needs doing. Folded from the logbook, never stored as a fact of its own. */
export interface Duty {
  readonly kind: DutyKind;
  readonly system: SystemId | null;
  /** The local date it is due, today or earlier where it should be done today. */
  readonly dueOn: LocalDate;
  /** When it turns urgent. */
  readonly latestOn?: LocalDate;
  /** Not due yet, but worth doing on this trip. */
  readonly alongside?: boolean;
  readonly litres?: number;
  readonly mL?: number;
  readonly product?: string;
  /** top-up: how strong, and what to mix into the litres asked. */
  readonly strength?: MixStrength;
  /** top-up, reservoir-change: mL of each concentrate for the litres asked. */
  readonly concentrates?: readonly ProductAmount[];
  /** clean: what. */
  readonly parts?: readonly CleanPart[];
  readonly minutesPerHour?: number;
  readonly probe?: string;
  /** chore: its name. */
  readonly chore?: string;
}

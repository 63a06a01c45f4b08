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
  readonly minutesPerHour?: number;
  readonly probe?: string;
  /** chore: its name. */
  readonly chore?: string;
}

import type { Duty } from '../greenhouse/duty.ts';
import type { LocalDate } from '../greenhouse/local-time.ts';
import type { Quantity } from '../greenhouse/quantity.ts';

/** A duty and the numbers behind it. */
export interface DutyLine {
  readonly duty: Duty;
  /** From this date on it is worth doing on a trip that is made anyway; null: never early. */
  readonly ridesFrom: LocalDate | null;
  readonly reason: Reason;
}

export type Reason =
  | {
      readonly kind: 'water';
      readonly litresNow: number;
      readonly litresSd: number;
      readonly usePerDayL: number;
      readonly lowL: number;
      readonly lowOnEarly: LocalDate | null;
      readonly lowOnLikely: LocalDate | null;
      /** Where it should be filled to. */
      readonly fillToL: number;
    }
  | {
      readonly kind: 'not-measured';
      readonly quantities: readonly Quantity[];
      /** null: never. */
      readonly lastOn: LocalDate | null;
    }
  | {
      readonly kind: 'chore';
      readonly everyDays: number;
      readonly lastDoneOn: LocalDate | null;
    };

import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { SaidTime } from './day-time.ts';

export const nothingSaid: SaidTime = {
  day: null,
  part: null,
  minutes: null,
  eitherHalf: false,
  byClock: false,
  meridiem: null,
  lastNight: false,
  weekdayOfToday: false,
};

export interface Building {
  said: SaidTime;
  from: number;
  to: number;
  since: boolean;
  until: boolean;
  earlier: boolean;
  /** The day that heads what is told. */
  headDay: LocalDate | null;
}

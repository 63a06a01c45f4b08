import type { LocalDate } from './local-time.ts';

/** One day of weather at the greenhouse, outdoors. */
export interface WeatherDay {
  readonly date: LocalDate;
  readonly tMinC: number;
  readonly tMaxC: number;
  readonly rhMeanPercent?: number;
  readonly windMs?: number;
  readonly solarMjM2?: number;
  /** False: a forecast, made on `toldOn`. */
  readonly observed: boolean;
  /** The local date on which it was told. */
  readonly toldOn: LocalDate;
}

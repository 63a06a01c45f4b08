/** How thirsty one local day is: the weather's share in water use. */
export interface DayDriver {
  /** First instant of the local day, and of the next. */
  readonly startMs: number;
  readonly endMs: number;
  /** Reference evapotranspiration, mm/day, positive. */
  readonly etoMm: number;
  /** Standard deviation of ln(etoMm): 0 for an observed day, grows with a forecast's lead. */
  readonly etoLogSd: number;
  readonly origin: 'observed' | 'forecast' | 'season';
}

/**
 * The share of a day's water that is lost between two fractions of that day. Leaves drink by light:
 * most of it goes between 6 and 20 o'clock, a little all night.
 */
export function shareOfDay(fromFraction: number, toFraction: number): number {
  return lostBy(toFraction) - lostBy(fromFraction);
}

/** Common practice: night transpiration is some 10 to 20 % of the day's total. */
const ROUND_THE_CLOCK_SHARE = 0.15;
const LIGHT_FROM = 6 / 24;
const LIGHT_TO = 20 / 24;

function lostBy(fraction: number): number {
  const light = Math.min(1, Math.max(0, (fraction - LIGHT_FROM) / (LIGHT_TO - LIGHT_FROM)));
  return (
    ROUND_THE_CLOCK_SHARE * fraction + (1 - ROUND_THE_CLOCK_SHARE) * light * light * (3 - 2 * light)
  );
}

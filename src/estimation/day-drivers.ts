import { celsius } from '../science/units/temperature.ts';
import { hargreavesEtoMmPerDay } from '../science/weather/hargreaves.ts';
import type { DayDriver } from './day-driver.ts';

/** A local day and what is known of its weather. */
export interface LocalDay {
  readonly startMs: number;
  /** First instant of the next local day. */
  readonly endMs: number;
  /** 1 to 366. */
  readonly dayOfYear: number;
  readonly weather: {
    readonly tMinC: number;
    readonly tMaxC: number;
    /** Null: observed; else how many days before it was forecast. */
    readonly leadDays: number | null;
  } | null;
}

/** ln ETo of a forecast: error on the day itself, growth of it a day, and where it stops growing. */
const FORECAST_LN_SD = 0.07;
const FORECAST_LN_SD_A_DAY = 0.03;
/** Days differ from the season's usual by about this, ln. */
const SEASON_LN_SD = 0.24;
/** A spell of weather is half forgotten in five days. */
const SPELL_MEMORY = 0.87;
/** Leaves drink a little on the dullest winter day. */
const LEAST_ETO_MM = 0.2;

/**
 * The thirst of each day, in order: Hargreaves from its temperatures where they are known, else the
 * usual for latitude and date, set right by the spell of weather that went before.
 */
export function dayDrivers(latitudeDegrees: number, days: readonly LocalDay[]): DayDriver[] {
  let spellLn = 0;
  return days.map((day): DayDriver => {
    const { startMs, endMs, weather } = day;
    const usual = usualEtoMm(latitudeDegrees, day.dayOfYear);
    const etoMm = weather && etoOf(weather.tMinC, weather.tMaxC, latitudeDegrees, day.dayOfYear);
    if (weather === null || etoMm === null) {
      spellLn *= SPELL_MEMORY;
      const guess = usual * Math.exp(spellLn);
      return { startMs, endMs, etoMm: guess, etoLogSd: SEASON_LN_SD, origin: 'season' };
    }
    spellLn = SPELL_MEMORY * spellLn + (1 - SPELL_MEMORY) * Math.log(etoMm / usual);
    if (weather.leadDays === null) {
      return { startMs, endMs, etoMm, etoLogSd: 0, origin: 'observed' };
    }
    const grown = FORECAST_LN_SD + FORECAST_LN_SD_A_DAY * Math.max(0, weather.leadDays);
    return { startMs, endMs, etoMm, etoLogSd: Math.min(SEASON_LN_SD, grown), origin: 'forecast' };
  });
}

function etoOf(aC: number, bC: number, latitudeDegrees: number, dayOfYear: number): number | null {
  const eto = hargreavesEtoMmPerDay({
    minCelsius: celsius(Math.min(aC, bC)),
    maxCelsius: celsius(Math.max(aC, bC)),
    latitudeDegrees,
    dayOfYear,
  });
  return eto.ok ? Math.max(LEAST_ETO_MM, eto.value) : null;
}

/** The warmest day follows the longest by about a month. */
const SEASON_LAG_DAYS = 30;
const YEAR_DAYS = 365.25;
const NORTHERN_MIDSUMMER_DAY = 172;
const USUAL_SPAN_C = 10;

/**
 * A usual day's thirst by latitude and date alone. The temperatures are a rough zonal guess, from
 * memory: only the shape over the year matters, since the level is learned.
 */
function usualEtoMm(latitudeDegrees: number, dayOfYear: number): number {
  const away = Math.abs(latitudeDegrees);
  const midsummer = NORTHERN_MIDSUMMER_DAY + (latitudeDegrees < 0 ? YEAR_DAYS / 2 : 0);
  const angle = (2 * Math.PI * (dayOfYear - midsummer - SEASON_LAG_DAYS)) / YEAR_DAYS;
  const meanC = 28 - 0.0065 * away * away + 0.23 * away * Math.cos(angle);
  const half = USUAL_SPAN_C / 2;
  return etoOf(meanC - half, meanC + half, latitudeDegrees, dayOfYear) ?? LEAST_ETO_MM;
}

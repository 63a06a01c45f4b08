import { type LocalDate, plusDays } from '../../greenhouse/local-time.ts';
import type { Scenario } from '../../greenhouse/scenario.ts';
import type { WeatherDay } from '../../greenhouse/weather.ts';
import type { WeatherBook } from '../../logbook/weather-book.ts';

/** A spell that is asked about lasts so long. */
export const SPELL_DAYS = 5;
/** Where no degrees are said: so much warmer or colder than foretold, or else a hot or a cold day. */
const APART_C = 8;
const UNKNOWN_TMAX_C = { hot: 33, cold: 12 } as const;
/** From the day's warmest to its coldest, where nothing is foretold. */
const SPAN_C = 12;

/** The weather with the spell asked about from today on, as if it were foretold. */
export function weatherIf(
  weather: WeatherBook,
  { way, tMaxC }: Extract<Scenario, { kind: 'weather' }>,
  today: LocalDate,
): WeatherBook {
  const next = new Map(weather);
  const step = way === 'hot' ? APART_C : -APART_C;
  for (let ahead = 0; ahead < SPELL_DAYS; ahead += 1) {
    const date = plusDays(today, ahead);
    const told = weather.get(date);
    const high = tMaxC ?? (told ? told.tMaxC + step : UNKNOWN_TMAX_C[way]);
    const low = told ? told.tMinC + (high - told.tMaxC) / 2 : high - SPAN_C;
    const day: WeatherDay = {
      date,
      tMinC: Math.min(low, high),
      tMaxC: high,
      observed: false,
      toldOn: today,
    };
    next.set(date, day);
  }
  return next;
}

import type { Season } from './season.ts';

export interface FixedInterval {
  readonly days: number;
  readonly trips: number;
  readonly lowDays: number;
}

/** The longest fixed interval that, with hindsight, keeps low days within `allowedShare`. */
export function bestFixedInterval(season: Season, allowedShare: number): FixedInterval {
  const systemDays = season.systems.length * season.weather.length;
  let best = everyDays(season, 1);
  for (let days = 2; days <= season.weather.length; days += 1) {
    const tried = everyDays(season, days);
    if (tried.lowDays <= allowedShare * systemDays) best = tried;
  }
  return best;
}

function everyDays(season: Season, days: number): FixedInterval {
  const levels = season.systems.map((system) => system.brimL);
  let trips = 0;
  let lowDays = 0;
  for (let day = 0; day < season.weather.length; day += 1) {
    const goes = day > 0 && day % days === 0;
    if (goes) trips += 1;
    for (const [i, system] of season.systems.entries()) {
      levels[i] = Math.max(0, (goes ? system.brimL : levels[i]!) - season.uses[i]!.litres[day]!);
      if (levels[i] < system.lowL) lowDays += 1;
    }
  }
  return { days, trips, lowDays };
}

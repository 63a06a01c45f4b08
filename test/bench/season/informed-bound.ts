import { normalCdf } from '../../../src/estimation/normal.ts';
import type { Asked, Keeper, Season } from './season.ts';

/** What it takes the day's noise to be: log-normal with this sd and memory. */
const NOISE_SD = 0.18;
const NOISE_MEMORY = 0.6;

/**
 * A keeper who knows each system's true mean use on every day, weather and prunings included, and every
 * fill, but not the day's noise. It goes when leaving the trip risks more than `lowDayPerTrip` low days
 * (mean over systems) for each trip saved.
 */
export function informedKeeper(season: Season, lowDayPerTrip: number): Keeper {
  let filledOn = 0;
  const goes = (day: number): boolean => {
    let harm = 0;
    let shortest = season.weather.length;
    for (const [i, system] of season.systems.entries()) {
      const usable = system.brimL - system.lowL;
      const mean = season.uses[i]!.meanLitres;
      harm += chanceLost(mean.slice(filledOn, day + 1), usable) / season.systems.length;
      shortest = Math.min(shortest, daysLasted(mean, day, usable));
    }
    return harm > lowDayPerTrip / shortest;
  };
  return {
    morning(day) {
      if (!goes(day)) return Promise.resolve([]);
      filledOn = day;
      return Promise.resolve(
        season.systems.map(
          (system, i): Asked => ({ system: i, litres: system.brimL, alongside: false }),
        ),
      );
    },
    toppedUp: () => Promise.resolve(),
  };
}

function daysLasted(mean: readonly number[], from: number, usable: number): number {
  let lost = 0;
  for (let day = from; day < mean.length; day += 1) {
    lost += mean[day]!;
    if (lost > usable) return Math.max(1, day - from);
  }
  return Math.max(1, mean.length - from);
}

/** P(Σ days > usable) for log-normal days with a memory, the sum taken as log-normal. */
function chanceLost(days: readonly number[], usable: number): number {
  let sum = 0;
  let variance = 0;
  for (const [i, a] of days.entries()) {
    sum += a;
    for (const [j, b] of days.entries()) {
      variance += a * b * Math.expm1(NOISE_SD ** 2 * NOISE_MEMORY ** Math.abs(i - j));
    }
  }
  const lnVar = Math.log1p(variance / (sum * sum));
  return normalCdf((Math.log(sum / usable) - lnVar / 2) / Math.sqrt(lnVar));
}

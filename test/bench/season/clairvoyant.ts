import type { Season } from './season.ts';

/** The days of the fewest trips when the future is known and every trip fills everything: go as late as possible. */
export function clairvoyantTrips(season: Season): number[] {
  const levels = season.systems.map((system) => system.brimL);
  const tripDays: number[] = [];
  for (let day = 0; day < season.weather.length; day += 1) {
    const left = levels.map((level, i) => level - season.uses[i]!.litres[day]!);
    const runsLow = left.some((level, i) => level < season.systems[i]!.lowL);
    if (runsLow) tripDays.push(day);
    for (const [i, system] of season.systems.entries()) {
      levels[i] = (runsLow ? system.brimL : levels[i]!) - season.uses[i]!.litres[day]!;
    }
  }
  return tripDays;
}

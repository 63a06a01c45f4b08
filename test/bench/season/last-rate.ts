import type { Asked, Keeper, Season } from './season.ts';

/**
 * The rule of thumb: a system goes on losing what it lost a day since its last top-up, and somebody
 * goes when it would be low by tomorrow, with `margin` times the rate in hand.
 */
export function lastRateKeeper(season: Season, margin: number): Keeper {
  const sinceDay = season.systems.map(() => 0);
  const rates = season.systems.map((system) => (system.brimL - system.lowL) / 3);
  return {
    morning(day) {
      const due = season.systems.map((system, i) => {
        const level = system.brimL - rates[i]! * (day - sinceDay[i]!);
        return level - margin * rates[i]! < system.lowL;
      });
      if (!due.includes(true)) return Promise.resolve([]);
      return Promise.resolve(
        season.systems.map((system, i): Asked => {
          const litres = Math.min(system.brimL, rates[i]! * (day - sinceDay[i]!));
          return { system: i, litres, alongside: !due[i] };
        }),
      );
    },
    toppedUp(day, system, litres) {
      const days = day - sinceDay[system]!;
      if (days > 0) rates[system] = litres / days;
      sinceDay[system] = day;
      return Promise.resolve();
    },
  };
}

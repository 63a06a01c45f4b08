import type { BenchSystem } from './greenhouse-sets.ts';
import type { BenchPlace } from './season-weather.ts';

/** What every system's solution is to be, in pH and in mS/cm. */
export const phRange = [5.5, 6.5] as const;
export const ecRange = [1.2, 2.2] as const;

/** A greenhouse file for the bot, as a grower would write one. */
export function greenhouseFile(
  place: BenchPlace,
  systems: readonly BenchSystem[],
  helpers: readonly string[] = ['tomas'],
): object {
  return {
    format: 1,
    greenhouse: {
      name: place.name,
      timeZone: place.timeZone,
      latitude: place.latitude,
      longitude: place.longitude,
      elevationM: 20,
      morning: '07:00',
      units: { volume: 'L', temperature: 'C', conductivity: 'mS/cm', tdsFactor: 500 },
      water: { name: 'tap', ec: 0.2, alkalinityMeqL: 1 },
      containers: { can: 10 },
    },
    members: [
      { handle: 'ines', name: 'Ines', role: 'grower', language: 'en' },
      ...helpers.map((handle) => ({
        handle,
        name: handle.charAt(0).toUpperCase() + handle.slice(1),
        role: 'helper',
        language: 'en',
      })),
    ],
    systems: systems.map(({ name, alias, method, brimL, lowL, depthCm, crop, plants }) => ({
      name,
      aliases: [alias],
      method,
      brimL,
      lowL,
      depthCm,
      crop,
      plants,
      ph: phRange,
      ec: ecRange,
      waterTemperatureC: [16, 26],
    })),
    probes: [],
    stock: [],
    chores: [],
  };
}

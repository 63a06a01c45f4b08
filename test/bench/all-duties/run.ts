import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { greenhouseFile } from '../season/greenhouse-file.ts';
import { truthNames } from '../season/hidden-use.ts';
import { startRehearsal } from '../season/rehearsal.ts';
import { makeSeason } from '../season/season.ts';
import { places, readWeather, years } from '../season/season-weather.ts';
import { playAllDuties } from './play-all-duties.ts';

/** Whole seasons in which a helper does every duty of a trip: what the other duties add to the trips for water. */
const sets = ['three', 'four', 'six'] as const;
const weather = readWeather();
const folder = mkdtempSync(join(tmpdir(), 'all-duties-'));
const causes = new Map<string, number>();
const falseAlerts = new Map<string, number>();
let systems = 0;
let [trips, waterTrips, lowDays, offDays, systemDays] = [0, 0, 0, 0, 0];

for (const [p, place] of places.entries()) {
  for (const [y, year] of years.entries()) {
    const set = sets[(y + p) % sets.length]!;
    const season = makeSeason(place, year, set, truthNames[y]!, weather.get(place.name)!);
    const path = join(folder, 'greenhouse.json');
    writeFileSync(path, JSON.stringify(wholeGreenhouse(season)));
    const rehearsal = startRehearsal(path);
    const outcome = await playAllDuties(season, rehearsal);
    await rehearsal.close();
    trips += outcome.trips;
    waterTrips += outcome.waterTrips;
    lowDays += outcome.lowDays;
    offDays += outcome.offDays;
    systemDays += outcome.systemDays;
    systems += season.systems.length;
    addTo(causes, outcome.causes);
    addTo(falseAlerts, outcome.falseAlerts);
    console.error(
      `${season.name}: ${String(outcome.trips)} trips, ${String(outcome.waterTrips)} of them for water; else ${told(outcome.causes)}`,
    );
  }
}
rmSync(folder, { recursive: true });

console.log(`trip days for all duties: ${(trips / waterTrips).toFixed(2)} times those for water`);
console.log(`what the others were for: ${told(causes)}`);
console.log(
  `system-days below the low mark: ${share(lowDays)}, well out of pH or EC range: ${share(offDays)}`,
);

console.log(
  `false alerts in ${String(systems)} system-seasons, by what they spoke of: ${told(falseAlerts)}`,
);

function addTo(into: Map<string, number>, counts: ReadonlyMap<string, number>): void {
  for (const [kind, count] of counts) into.set(kind, (into.get(kind) ?? 0) + count);
}

/** With probes, stock, air and a chore: whatever asks for work. */
function wholeGreenhouse({ place, systems }: Parameters<typeof playAllDuties>[0]): object {
  const plain = greenhouseFile(place, systems) as {
    readonly systems: readonly { method: string; name: string }[];
  };
  return {
    ...plain,
    systems: plain.systems.map((system) =>
      system.method === 'deep-water-culture'
        ? { ...system, aeration: { kind: 'air-stones', minutesPerHour: 60 } }
        : system,
    ),
    probes: [
      { name: 'pen', measures: ['ph'], calibratedOn: null },
      { name: 'stick', measures: ['ec'], calibratedOn: null },
    ],
    stock: [
      { product: 'nutrient-a', mL: 8000 },
      { product: 'nutrient-b', mL: 8000 },
      { product: 'ph-down', mL: 2000 },
      { product: 'ph-up', mL: 2000 },
    ],
    chores: [
      { name: 'tie up the plants', system: systems[0]!.name, everyDays: 7, lastDoneOn: null },
    ],
  };
}

function told(counts: ReadonlyMap<string, number>): string {
  const all = [...counts].map(([kind, count]) => `${kind} ${String(count)}`);
  return all.length === 0 ? 'none' : all.join(', ');
}

function share(days: number): string {
  return `${((100 * days) / systemDays).toFixed(2)} %`;
}

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { clairvoyantTrips } from '../season/clairvoyant.ts';
import { greenhouseFile } from '../season/greenhouse-file.ts';
import { startRehearsal } from '../season/rehearsal.ts';
import { readWeather } from '../season/season-weather.ts';
import { daysAtHome, daysAway, nthHoliday, stretchOf } from './holiday.ts';
import { helpers } from './household.ts';
import { DRY_SHARE, playHoliday } from './play-holiday.ts';

/**
 * A hundred summer holidays of two weeks with three helpers, each after four weeks at home, played
 * through the rehearsal. `--some 10` plays every tenth; `--forgetful`: one top-up in ten is not told.
 */
const { values } = parseArgs({
  options: { some: { type: 'string', default: '1' }, forgetful: { type: 'boolean' } },
});
const every = Number(values.some);
const manners = {
  missesOneIn: 8,
  stepsIn: 0.5,
  forgetsOneIn: values.forgetful === true ? 10 : Number.POSITIVE_INFINITY,
};
const weather = readWeather();
const folder = mkdtempSync(join(tmpdir(), 'holiday-'));
const low = new Map<string, number>();
const dry = new Map<string, number>();
let [holidays, trips, clairvoyant] = [0, 0, 0];

for (let n = 0; n < 100; n += every) {
  const holiday = nthHoliday(n, weather);
  const { season } = holiday;
  const path = join(folder, 'greenhouse.json');
  writeFileSync(path, JSON.stringify(greenhouseFile(season.place, season.systems, helpers)));
  const rehearsal = startRehearsal(path);
  const outcome = await playHoliday(holiday, rehearsal, manners);
  await rehearsal.close();
  const best = clairvoyantTrips(stretchOf(season, daysAtHome, daysAway)).length;
  holidays += 1;
  trips += outcome.trips;
  clairvoyant += best;
  for (const [i, { name }] of season.systems.entries()) {
    if (outcome.lowDays[i]! > 0) low.set(name, (low.get(name) ?? 0) + 1);
    if (outcome.dryDays[i]! > 0) dry.set(name, (dry.get(name) ?? 0) + 1);
  }
  const lows = outcome.lowDays.reduce((sum, days) => sum + days, 0);
  console.error(
    `${holiday.name}: ${String(outcome.trips)} trips of ${String(best)}, ${String(lows)} low days`,
  );
}
rmSync(folder, { recursive: true });

console.log(`${String(holidays)} holidays of ${String(daysAway)} days`);
console.log(
  `trips: ${String(trips)}, the clairvoyant's ${String(clairvoyant)}: ${(trips / clairvoyant).toFixed(2)} times`,
);
console.log(`holidays in which it fell below its low mark: ${told(low)}`);
console.log(
  `holidays in which its roots ran dry (below ${String(100 * DRY_SHARE)} % of the low mark): ${told(dry)}`,
);

function told(counts: ReadonlyMap<string, number>): string {
  const all = [...counts].map(([name, count]) => `${name} ${String(count)}`);
  return all.length === 0 ? 'none' : all.join(', ');
}

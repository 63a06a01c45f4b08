import {
  type WaterEvidence,
  waterEvidence,
  waterFindings,
} from '../../../src/estimation/water-watch.ts';
import { directKeeper } from '../season/direct-keeper.ts';
import { greenhouseSets } from '../season/greenhouse-sets.ts';
import { truthNames } from '../season/hidden-use.ts';
import { type Helper, makeSeason, playSeason, type Season } from '../season/season.ts';
import { places, readWeather, years } from '../season/season-weather.ts';

/**
 * How often the water's surprises are false, by system and season of seven months, and after how many
 * days a leak of a given size, or roots that stopped drinking, are found. Whole seasons of real weather
 * with a hidden use that the estimator is not built like; `--every` plays all of them.
 */
const helper: Helper = { way: 'brim', forgetsOneIn: 10, roundsToL: 1 };
const DAY_MS = 86_400_000;
const FAULT_FROM_DAY = 70;
const LOOKED_FOR_DAYS = 30;
/** Faults by what they do to a day's use. */
const faults = [
  {
    name: 'leak, half the use again',
    way: 'above',
    use: (litres: number, mean: number) => litres + 0.5 * mean,
  },
  {
    name: 'leak, as much again',
    way: 'above',
    use: (litres: number, mean: number) => litres + mean,
  },
  {
    name: 'leak, three times as much',
    way: 'above',
    use: (litres: number, mean: number) => litres + 3 * mean,
  },
  { name: 'roots drink half', way: 'below', use: (litres: number) => 0.5 * litres },
  { name: 'roots drink a fifth', way: 'below', use: (litres: number) => 0.2 * litres },
] as const;

interface Tally {
  systems: number;
  readonly days: number[];
}
const falseOnes = { systems: 0, above: 0, below: 0 };
const found = new Map<string, Tally>(faults.map(({ name }) => [name, { systems: 0, days: [] }]));

for (const season of plannedSeasons()) {
  const quiet = await findingsOf(season);
  falseOnes.systems += season.systems.length;
  falseOnes.above += quiet.flat().filter(({ way }) => way === 'above').length;
  falseOnes.below += quiet.flat().filter(({ way }) => way === 'below').length;
  for (const fault of faults) {
    const tally = found.get(fault.name)!;
    const faulty = await findingsOf(withFault(season, fault.use));
    tally.systems += season.systems.length;
    for (const findings of faulty) {
      const first = findings.find(
        ({ way, atMs }) => way === fault.way && atMs / DAY_MS >= FAULT_FROM_DAY,
      );
      const days = first ? first.atMs / DAY_MS - FAULT_FROM_DAY : Infinity;
      if (days <= LOOKED_FOR_DAYS) tally.days.push(days);
    }
  }
}
print();

function* plannedSeasons(): Generator<Season> {
  const weather = readWeather();
  const every = process.argv.includes('--every');
  let count = 0;
  for (const place of places) {
    for (const year of years) {
      for (const set of Object.keys(greenhouseSets)) {
        for (const truth of truthNames) {
          count += 1;
          if (every || count % 7 === 0) {
            yield makeSeason(place, year, set, truth, weather.get(place.name)!);
          }
        }
      }
    }
  }
}

/** Every system's use changed from a day on. */
function withFault(season: Season, use: (litres: number, mean: number) => number): Season {
  return {
    ...season,
    uses: season.uses.map((truth) => ({
      ...truth,
      litres: truth.litres.map((litres, day) =>
        day < FAULT_FROM_DAY ? litres : use(litres, truth.meanLitres[day]!),
      ),
    })),
  };
}

async function findingsOf(season: Season) {
  const evidence = season.systems.map((): WaterEvidence[] => []);
  const keeper = directKeeper(season, (position, system, before, event, drivers) => {
    const each = waterEvidence(system, before, event, drivers);
    if (each) evidence[position]!.push(each);
  });
  await playSeason(season, keeper, helper, 'forecasts');
  return season.systems.map((system, i) =>
    waterFindings(
      {
        brimL: system.brimL,
        lowL: system.lowL,
        crop: system.crop,
        plants: system.plants,
        filledToBrim: system.method !== 'non-circulating',
      },
      evidence[i]!,
    ),
  );
}

function print(): void {
  const { systems, above, below } = falseOnes;
  const each = (count: number) => (count / systems).toFixed(3);
  console.log(
    `false alerts a system and season (${String(systems)} of them): too much used ${each(above)}, too little ${each(below)}`,
  );
  console.log(
    `found within ${String(LOOKED_FOR_DAYS)} days of day ${String(FAULT_FROM_DAY)}, and after how many days (half, nine in ten)`,
  );
  for (const [name, tally] of found) {
    const days = tally.days.toSorted((one, other) => one - other);
    const at = (share: number) => days[Math.floor(share * (days.length - 1))]?.toFixed(0) ?? '–';
    const share = ((100 * days.length) / tally.systems).toFixed(0);
    console.log(
      `${name.padEnd(28)} ${share.padStart(4)} %   ${at(0.5).padStart(3)}  ${at(0.9).padStart(3)}`,
    );
  }
}

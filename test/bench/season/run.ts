import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { clairvoyantTrips } from './clairvoyant.ts';
import { directKeeper } from './direct-keeper.ts';
import { bestFixedInterval } from './fixed-interval.ts';
import { greenhouseFile } from './greenhouse-file.ts';
import { greenhouseSets } from './greenhouse-sets.ts';
import { type TruthName, truthNames } from './hidden-use.ts';
import { informedKeeper } from './informed-bound.ts';
import { lastRateKeeper } from './last-rate.ts';
import { startRehearsal } from './rehearsal.ts';
import { rehearsalKeeper } from './rehearsal-keeper.ts';
import { addSeason, coverage, emptyScores } from './scores.ts';
import {
  type Helper,
  makeSeason,
  type Outcome,
  playSeason,
  type Season,
  type Sky,
  skies,
} from './season.ts';
import { places, readWeather, years } from './season-weather.ts';

/**
 * Whole seasons of real weather with a hidden water use, a helper who goes when asked, and the bot met
 * through its rehearsal. `--direct` asks estimator and planner without the bot around them (seconds
 * instead of minutes, all seasons); `--every` plays all seasons through the rehearsal too.
 */
const direct = process.argv.includes('--direct');
const every = direct || process.argv.includes('--every');
const helper: Helper = { way: 'brim', forgetsOneIn: 10, roundsToL: 1 };
const SAFE_SHARE = 0.001;
/** Margins of the two rules that have one: what makes them about as safe as the bot is held to be. */
const LAST_RATE_MARGIN = 2.5;
const INFORMED_LOW_DAYS_A_TRIP = 1 / 7;

interface Tally {
  seasons: number;
  clairvoyant: number;
  systemDays: number;
  readonly bot: Count;
  readonly fixed: Count;
  readonly lastRate: Count;
  readonly informed: Count;
}
interface Count {
  trips: number;
  lowDays: number;
}

const tallies = new Map<string, Tally>();
const scores = emptyScores();
const folder = mkdtempSync(join(tmpdir(), 'season-'));

for (const { season, groups, sky } of plannedSeasons()) {
  const outcome = await playBot(season, sky);
  const fixed = bestFixedInterval(season, SAFE_SHARE);
  const lastRate = await playSeason(
    season,
    lastRateKeeper(season, LAST_RATE_MARGIN),
    helper,
    'no weather',
  );
  const informed = await playSeason(
    season,
    informedKeeper(season, INFORMED_LOW_DAYS_A_TRIP / Math.sqrt(season.systems.length)),
    { ...helper, forgetsOneIn: Infinity },
    'no weather',
  );
  for (const group of ['all', ...groups]) {
    const tally = tallies.get(group) ?? emptyTally();
    tallies.set(group, tally);
    tally.seasons += 1;
    tally.clairvoyant += clairvoyantTrips(season).length;
    tally.systemDays += outcome.systemDays;
    count(tally.bot, outcome);
    count(tally.fixed, fixed);
    count(tally.lastRate, lastRate);
    count(tally.informed, informed);
  }
}
rmSync(folder, { recursive: true });
print();

/** All seasons, or a spread of sixteen where each one takes the rehearsal's time. */
function* plannedSeasons(): Generator<{
  readonly season: Season;
  readonly groups: readonly string[];
  readonly sky: Sky;
}> {
  const weather = readWeather();
  const sets = Object.keys(greenhouseSets);
  for (const place of places) {
    for (const year of years) {
      for (const set of sets) {
        for (const truth of truthNames) {
          for (const sky of skies) {
            if (!every && !isInSpread(year, set, truth, sky, place.name)) continue;
            const season = makeSeason(place, year, set, truth, weather.get(place.name)!);
            yield { season, groups: [set, truth, sky], sky };
          }
        }
      }
    }
  }
}

/** Every place, year, number of systems, truth and sky comes up, each pair of them evenly. */
function isInSpread(year: number, set: string, truth: TruthName, sky: Sky, place: string): boolean {
  const y = year - years[0];
  const s = Object.keys(greenhouseSets).indexOf(set);
  const t = truthNames.indexOf(truth);
  const p = place === 'Seattle' ? 0 : 1;
  return (y + s) % 4 === t && (y + 2 * p + s) % 3 === skies.indexOf(sky);
}

async function playBot(season: Season, sky: Sky): Promise<Outcome> {
  const keeper = directKeeper(season);
  if (direct) {
    const outcome = await playSeason(season, keeper, helper, sky);
    addSeason(scores, season, outcome, keeper.foreseen);
    return outcome;
  }
  const path = join(folder, 'greenhouse.json');
  writeFileSync(path, JSON.stringify(greenhouseFile(season.place, season.systems)));
  const rehearsal = startRehearsal(path);
  const outcome = await playSeason(season, rehearsalKeeper(season, rehearsal), helper, sky);
  await rehearsal.close();
  console.error(
    `${season.name}: ${String(outcome.trips)} trips, ${String(outcome.lowDays)} low days`,
  );
  return outcome;
}

function emptyTally(): Tally {
  const none = (): Count => ({ trips: 0, lowDays: 0 });
  return {
    seasons: 0,
    clairvoyant: 0,
    systemDays: 0,
    bot: none(),
    fixed: none(),
    lastRate: none(),
    informed: none(),
  };
}

function count(into: Count, from: Readonly<Count>): void {
  into.trips += from.trips;
  into.lowDays += from.lowDays;
}

function print(): void {
  console.log("trips as a multiple of the clairvoyant's (share of system-days below the low mark)");
  console.log(
    ['', 'seasons', 'bot', 'informed', 'fixed interval', 'last rate'].map(column).join(''),
  );
  for (const [group, tally] of tallies) {
    const told = ({ trips, lowDays }: Count) =>
      `${(trips / tally.clairvoyant).toFixed(2)} (${((100 * lowDays) / tally.systemDays).toFixed(2)} %)`;
    const { bot, informed, fixed, lastRate } = tally;
    const cells = [bot, informed, fixed, lastRate].map(told);
    console.log([group, String(tally.seasons), ...cells].map(column).join(''));
  }
  if (!direct) return;
  for (const [name, pits] of [
    ['litres', scores.litresPits],
    ['dates', scores.datePits],
  ] as const) {
    const held = [0.5, 0.9, 0.98].map((p) => `${String(100 * p)} %: ${percent(coverage(pits, p))}`);
    console.log(`intervals of ${name} that held: ${held.join(', ')} of ${String(pits.length)}`);
  }
  const { bot, climatology, lastRate, scale } = scores.crps;
  const crps = [bot, climatology, lastRate].map((x) => percent(x / scale));
  console.log(
    `CRPS of three days' litres, share of the mean: bot ${crps[0]!}, climatology ${crps[1]!}, last rate ${crps[2]!}`,
  );
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

function column(text: string, position: number): string {
  return position === 0 ? text.padEnd(16) : text.padStart(17);
}

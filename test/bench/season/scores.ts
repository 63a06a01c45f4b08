import { type LossPart, lossChance } from '../../../src/estimation/loss-mixture.ts';
import type { WaterOutlook } from '../../../src/estimation/water-outlook.ts';
import type { Outcome, Season } from './season.ts';

/** How well what was foreseen held, over mornings, systems and horizons. */
export interface Scores {
  /** Probability transforms of the litres lost over the next days: uniform if calibrated. */
  readonly litresPits: number[];
  /** The same of the day on which the low mark would have been reached. */
  readonly datePits: number[];
  /** CRPS of the litres lost over the next three days, as a share of the mean loss. */
  readonly crps: { bot: number; climatology: number; lastRate: number; scale: number };
}

export function emptyScores(): Scores {
  return {
    litresPits: [],
    datePits: [],
    crps: { bot: 0, climatology: 0, lastRate: 0, scale: 0 },
  };
}

/** Share of transforms inside the central interval of this probability. */
export function coverage(pits: readonly number[], interval: number): number {
  const tail = (1 - interval) / 2;
  return pits.filter((pit) => pit >= tail && pit <= 1 - tail).length / pits.length;
}

const CRPS_DAYS = 3;
/** Within this many days of the season's end a low mark may be reached unseen: left out. */
const UNSEEN_DAYS = 45;

/** Adds a season's mornings to the scores. */
export function addSeason(
  scores: Scores,
  season: Season,
  outcome: Outcome,
  foreseen: readonly (readonly WaterOutlook[])[],
): void {
  for (const [day, outlooks] of foreseen.entries()) {
    for (const [i, outlook] of outlooks.entries()) {
      const use = season.uses[i]!.litres;
      for (const { days, parts } of outlook.lossNext) {
        if (day + days > use.length) continue;
        const lost = sum(use.slice(day, day + days));
        scores.litresPits.push(1 - lossChance(parts, lost));
        if (days === CRPS_DAYS) addCrps(scores, parts, lost, use, day, outcome.tripDays);
      }
      if (day + UNSEEN_DAYS > use.length) continue;
      const usableL = outcome.levels[day]![i]! - season.systems[i]!.lowL;
      const pit = datePit(outlook, use.slice(day), usableL);
      if (pit !== null) scores.datePits.push(pit);
    }
  }
}

/** Where in the foreseen distribution of days the true one falls, the middle of its step. */
function datePit(outlook: WaterOutlook, use: readonly number[], usableL: number): number | null {
  let lost = 0;
  for (const [ahead, litres] of use.entries()) {
    lost += litres;
    if (lost <= usableL) continue;
    const before = outlook.lowCurve[ahead];
    const after = outlook.lowCurve[ahead + 1];
    return before && after ? (before.chance + after.chance) / 2 : null;
  }
  return null;
}

function addCrps(
  { crps }: Scores,
  parts: readonly LossPart[],
  lost: number,
  use: readonly number[],
  day: number,
  tripDays: readonly number[],
): void {
  const past = Array.from({ length: day - CRPS_DAYS + 1 }, (_, d) =>
    sum(use.slice(d, d + CRPS_DAYS)),
  );
  const trips = tripDays.filter((trip) => trip <= day);
  const [from, to] = [trips.at(-2) ?? 0, trips.at(-1)];
  if (past.length === 0 || to === undefined || to === from) return;
  const rate = sum(use.slice(from, to)) / (to - from);
  crps.bot += mixtureCrps(parts, lost);
  crps.climatology += ensembleCrps(past, lost);
  crps.lastRate += Math.abs(rate * CRPS_DAYS - lost);
  crps.scale += lost;
}

const GRID = 200;

/** ∫ (F(x) − [x ≥ y])² dx by the midpoint rule, out to where the tail is gone. */
function mixtureCrps(parts: readonly LossPart[], y: number): number {
  let top = 2 * y;
  while (lossChance(parts, top) > 1e-4) top *= 1.5;
  const step = top / GRID;
  let total = 0;
  for (let k = 0; k < GRID; k += 1) {
    const x = (k + 0.5) * step;
    const above = lossChance(parts, x);
    total += step * (x >= y ? above ** 2 : (1 - above) ** 2);
  }
  return total;
}

/** E|X − y| − E|X − X′| / 2 over a sample. */
function ensembleCrps(sample: readonly number[], y: number): number {
  const n = sample.length;
  const sorted = sample.toSorted((a, b) => a - b);
  const spread = sum(sorted.map((x, i) => (2 * i - n + 1) * x)) / (n * n);
  return sum(sample.map((x) => Math.abs(x - y))) / n - spread;
}

function sum(xs: readonly number[]): number {
  return xs.reduce((total, x) => total + x, 0);
}

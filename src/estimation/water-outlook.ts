import type { DayDriver } from './day-driver.ts';
import { type LevelBand, levelBand } from './level-band.ts';
import { levelOf } from './level-update.ts';
import { belowChance, type LossPart, lossChance } from './loss-mixture.ts';
import { useModels } from './use-model.ts';
import { advanceBelief, type MovingState, moveOn, stretchesBetween } from './water-advance.ts';
import { ANCHOR, LOST, STATE_SIZE, type WaterBelief } from './water-belief.ts';
import type { WaterSystem } from './water-system.ts';

/** What is to be expected of one system's water. */
export interface WaterOutlook {
  readonly atMs: number;
  readonly litres: number;
  readonly litresSd: number;
  /** Where the level lies now. With several stories of what happened, its middle is not their mean. */
  readonly band: LevelBand;
  /** Over the next 24 hours. */
  readonly usePerDay: number;
  readonly usePerDaySd: number;
  /** When the low mark is reached with probability 5, 50 and 95 %; null: not within the horizon. */
  readonly lowAtMs: {
    readonly p5: number | null;
    readonly p50: number | null;
    readonly p95: number | null;
  };
  /** Litres lost over the next 1, 3 and 7 days. */
  readonly useNext: readonly {
    readonly days: number;
    readonly p5: number;
    readonly p50: number;
    readonly p95: number;
  }[];
  /** The whole distributions behind `useNext`. */
  readonly lossNext: readonly { readonly days: number; readonly parts: readonly LossPart[] }[];
  /** Chance of having reached the low mark, now and at each local day's end. */
  readonly lowCurve: readonly { readonly atMs: number; readonly chance: number }[];
  /** Chance that the low mark is reached by each of the visits asked about. */
  readonly lowByVisit: readonly number[];
  /** The same if the system were topped up to `fillToL` now. */
  readonly lowByVisitIfFilled: readonly number[];
  /** How full a top-up now would make it. */
  readonly fillToL: number;
}

export interface OutlookQuestion {
  readonly atMs: number;
  /** Local days without gaps from the belief's instant on; the last one ends the horizon. */
  readonly drivers: readonly DayDriver[];
  /** Instants at which somebody could be there, the earliest first. */
  readonly visitsAtMs: readonly number[];
  /** A top-up may raise the level by this much and no more; null: up to the brim. */
  readonly raiseAtMostL: number | null;
}

const DAY_MS = 86_400_000;
const USE_DAYS = [1, 3, 7];
/** Parts lighter than this do not move any figure that is told. */
const LIGHTEST_FORESEEN = 0.002;
/** Once it is this sure, later visits are as sure. */
const SURE = 0.9995;

/**
 * What the belief, moved on to `atMs`, says about the days ahead. The level now is worked out at once,
 * what lies ahead when it is first asked for: most receipts ask for the level alone.
 */
export function outlook(
  system: WaterSystem,
  before: WaterBelief,
  question: OutlookQuestion,
): WaterOutlook {
  const whole = advanceBelief(before, question.atMs, question.drivers);
  const belief = heavyParts(whole);
  const now = levelNow(belief, system);
  const fillToL = Math.min(system.brimL, now.litres + (question.raiseAtMostL ?? system.brimL));
  const asItIs = once(() => foresee(belief, system, question));
  const ifFilled = once(() => {
    const filled = { ...belief, parts: belief.parts.map((part) => filledPart(part, fillToL)) };
    return foresee(filled, system, question);
  });
  const firstDay = once(() => momentsOfLoss(ifFilled().lossAfterDays[0]!));
  const useNext = once(() =>
    USE_DAYS.map((days, i) => {
      const at = (p: number) => lossQuantile(ifFilled().lossAfterDays[i]!, p);
      return { days, p5: at(0.05), p50: at(0.5), p95: at(0.95) };
    }),
  );
  const band = once(() => levelBand(whole, system.brimL));
  return {
    atMs: question.atMs,
    litres: now.litres,
    litresSd: now.sd,
    get band() {
      return band();
    },
    get usePerDay() {
      return firstDay().mean;
    },
    get usePerDaySd() {
      return firstDay().sd;
    },
    get lowAtMs() {
      const { curve } = asItIs();
      return {
        p5: whenReached(curve, 0.05),
        p50: whenReached(curve, 0.5),
        p95: whenReached(curve, 0.95),
      };
    },
    get useNext() {
      return useNext();
    },
    get lossNext() {
      return USE_DAYS.map((days, i) => ({ days, parts: ifFilled().lossAfterDays[i]! }));
    },
    get lowCurve() {
      return asItIs().curve;
    },
    get lowByVisit() {
      return asItIs().lowByVisit;
    },
    get lowByVisitIfFilled() {
      return ifFilled().lowByVisit;
    },
    fillToL,
  };
}

/** Works something out when it is first asked for. */
function once<T>(work: () => T): () => T {
  let found: { readonly value: T } | null = null;
  return () => (found ??= { value: work() }).value;
}

function heavyParts(belief: WaterBelief): WaterBelief {
  const parts = belief.parts.filter((part) => part.weight > LIGHTEST_FORESEEN);
  const total = parts.reduce((sum, part) => sum + part.weight, 0);
  return { ...belief, parts: parts.map((part) => ({ ...part, weight: part.weight / total })) };
}

function levelNow(belief: WaterBelief, system: WaterSystem): { litres: number; sd: number } {
  let mean = 0;
  let square = 0;
  for (const part of belief.parts) {
    const { litres, variance } = levelOf(part);
    mean += part.weight * litres;
    square += part.weight * (litres * litres + variance);
  }
  const sd = Math.sqrt(Math.max(0, square - mean * mean));
  return { litres: Math.min(system.brimL, Math.max(0, mean)), sd };
}

function filledPart(part: WaterBelief['parts'][number], toL: number): WaterBelief['parts'][number] {
  const mean = part.mean.slice();
  const cov = part.cov.slice();
  mean[ANCHOR] = toL;
  mean[LOST] = 0;
  for (let i = 0; i < STATE_SIZE; i += 1) {
    for (const which of [ANCHOR, LOST]) {
      cov[which * STATE_SIZE + i] = 0;
      cov[i * STATE_SIZE + which] = 0;
    }
  }
  return { ...part, mean, cov };
}

interface Foreseen {
  readonly lowByVisit: readonly number[];
  readonly lossAfterDays: readonly (readonly LossPart[])[];
  /** Chance of having reached the low mark, at now and at each day's end. */
  readonly curve: readonly { readonly atMs: number; readonly chance: number }[];
}

/** Moves the whole bank through the days ahead, looking at the visits, day ends and use horizons. */
function foresee(belief: WaterBelief, system: WaterSystem, question: OutlookQuestion): Foreseen {
  const { drivers, visitsAtMs, atMs } = question;
  const states = belief.parts.map((part): MovingState & { weight: number; model: number } => ({
    ...part,
    mean: part.mean.slice(),
    cov: part.cov.slice(),
  }));
  const useEnds = USE_DAYS.map((days) => atMs + days * DAY_MS);
  const dayEnds = drivers.filter((day) => day.endMs > atMs).map((day) => day.endMs);
  const stops = [...new Set([...visitsAtMs, ...useEnds, ...dayEnds])].sort((a, b) => a - b);
  const chanceAt = new Map<number, number>();
  const lossAfterDays: LossPart[][] = [];
  const curve = [{ atMs, chance: belowChance(states, system.lowL) }];
  let from = atMs;
  let chance = curve[0]!.chance;
  for (const stop of stops) {
    const done = chance > SURE && lossAfterDays.length === USE_DAYS.length;
    if (stop > from && !done) {
      for (const stretch of stretchesBetween(from, stop, drivers)) {
        for (const state of states) moveOn(state, stretch, useModels[state.model]!);
      }
      from = stop;
      chance = Math.max(chance, belowChance(states, system.lowL));
    }
    chanceAt.set(stop, chance);
    if (useEnds.includes(stop)) {
      lossAfterDays.push(
        states.map(({ weight, mean, cov }) => ({
          weight,
          lost: mean[LOST]!,
          variance: cov[LOST * STATE_SIZE + LOST]!,
        })),
      );
    }
    if (dayEnds.includes(stop)) curve.push({ atMs: stop, chance });
  }
  return { lowByVisit: visitsAtMs.map((at) => chanceAt.get(at)!), lossAfterDays, curve };
}

function momentsOfLoss(parts: readonly LossPart[]): { mean: number; sd: number } {
  const mean = parts.reduce((sum, part) => sum + part.weight * part.lost, 0);
  const square = parts.reduce(
    (sum, part) => sum + part.weight * (part.lost * part.lost + part.variance),
    0,
  );
  return { mean, sd: Math.sqrt(Math.max(0, square - mean * mean)) };
}

/** When the rising curve passes `chance`, straight between day ends. */
function whenReached(curve: Foreseen['curve'], chance: number): number | null {
  for (const [i, point] of curve.entries()) {
    if (point.chance < chance) continue;
    const before = curve[i - 1];
    if (!before) return point.atMs;
    const share = (chance - before.chance) / (point.chance - before.chance);
    return before.atMs + share * (point.atMs - before.atMs);
  }
  return null;
}

/** Bisection steps; 2^-40 of the bracket is finer than anybody pours. */
const BISECTIONS = 40;

function lossQuantile(parts: readonly LossPart[], p: number): number {
  let low = 0;
  let high = 1;
  while (lossChance(parts, high) > 1 - p) high *= 2;
  for (let i = 0; i < BISECTIONS; i += 1) {
    const middle = (low + high) / 2;
    if (lossChance(parts, middle) > 1 - p) low = middle;
    else high = middle;
  }
  return high;
}

import type { DayDriver } from './day-driver.ts';
import { toBrimChance } from './fill-habit.ts';
import { levelOf } from './level-update.ts';
import type { WaterBelief } from './water-belief.ts';
import type { WaterEvent } from './water-event.ts';
import { amountSdL, readingSdL } from './water-reading.ts';
import { surpriseOf } from './water-surprise.ts';
import type { WaterSystem } from './water-system.ts';

/** How one event that tells a level compares with what was believed before it. */
export interface WaterEvidence {
  readonly fromMs: number;
  readonly atMs: number;
  /** Lost since the event before, litres: as found, and as was to be expected. */
  readonly usedL: number;
  readonly expectedL: number;
  /** −ln of the chance of a level so low or lower, and of one so high or higher. */
  readonly above: number;
  readonly below: number;
}

/** Use that no longer fits what was learned, from the first event that pointed there to the last. */
export interface WaterFinding {
  readonly way: 'above' | 'below';
  readonly fromMs: number;
  readonly atMs: number;
  readonly usedL: number;
  readonly expectedL: number;
}

/** A level is taken to lie this many reading errors nearer to what was expected. */
const LENIENT_SDS = 1.5;
/** What is told within this of something else is of the same visit, in whatever order it is told. */
const SAME_VISIT_MS = 6 * 3_600_000;
/** A fill tells that little was lost only where fills go to the brim. */
const BRIM_FILLER_CHANCE = 0.7;
const AS_ASKED_WITHIN_L = 0.5;

/** What an event says of the use before it; null where it tells no level, or comes of the same visit. */
export function waterEvidence(
  system: WaterSystem,
  before: WaterBelief,
  event: WaterEvent,
  drivers: readonly DayDriver[],
): WaterEvidence | null {
  if (event.atMs - before.atMs < SAME_VISIT_MS) return null;
  const found = levelTold(system, before, event);
  if (!found) return null;
  const { levelL, sdL, tellsHigh } = found;
  const slack = LENIENT_SDS * sdL;
  const low = surpriseOf(system, before, event.atMs, levelL + slack, drivers);
  const high = surpriseOf(system, before, event.atMs, levelL - slack, drivers);
  const startL = before.parts.reduce((sum, part) => sum + part.weight * levelOf(part).litres, 0);
  return {
    fromMs: before.atMs,
    atMs: event.atMs,
    usedL: startL - levelL,
    expectedL: startL - low.expectedL,
    above: -Math.log(Math.max(LEAST_CHANCE, low.chanceOfLess)),
    below: tellsHigh ? -Math.log(Math.max(LEAST_CHANCE, high.chanceOfMore)) : 0,
  };
}

const LEAST_CHANCE = 1e-12;

function levelTold(
  system: WaterSystem,
  before: WaterBelief,
  event: WaterEvent,
): { readonly levelL: number; readonly sdL: number; readonly tellsHigh: boolean } | null {
  if (event.kind === 'level') {
    const { litres, approximate } = event;
    return { levelL: litres, sdL: readingSdL(litres, approximate, system), tellsHigh: true };
  }
  if (event.kind !== 'top-up' || event.litres === null) return null;
  const { litres, approximate, askedL } = event;
  const isAsAsked = askedL !== null && Math.abs(litres - askedL) <= AS_ASKED_WITHIN_L;
  return {
    // No more than this was in it, or it would have run over.
    levelL: system.brimL - litres,
    sdL: amountSdL(litres, approximate, system),
    tellsHigh: toBrimChance(before.habit) > BRIM_FILLER_CHANCE && !isAsAsked,
  };
}

/**
 * A cumulative sum of surprises: each event adds −ln of its chance, less what chance alone brings, and
 * a run ends where it falls to nothing (Page's test). That little was used takes two events at least,
 * since it hurts less and a fill not told looks the same. Tuned by `npm run bench:surprises` to fewer
 * than one false alert in ten system-seasons.
 *
 * Source: Page 1954, Continuous inspection schemes, Biometrika 41, 100–115.
 */
const RULES = {
  above: { allowed: 1.5, alarm: 3, mostAnEvent: 10 },
  below: { allowed: 1.6, alarm: 2, mostAnEvent: 3 },
} as const;
/** What differs by less is not worth a word: share of the expected, and of the usable litres. */
const LEAST_SHARE = { above: 1.3, below: 0.65 } as const;
const LEAST_LITRES_SHARE = 0.03;
/** The same is not said again so soon. */
const QUIET_MS = 10 * 86_400_000;

/** Every finding in events in order; those after one are judged anew. */
export function waterFindings(
  system: WaterSystem,
  evidence: readonly WaterEvidence[],
): readonly WaterFinding[] {
  return (['above', 'below'] as const).flatMap((way) => {
    const { allowed, alarm, mostAnEvent } = RULES[way];
    const findings: WaterFinding[] = [];
    let sum = 0;
    let run: { fromMs: number; usedL: number; expectedL: number } | null = null;
    for (const each of evidence) {
      sum += Math.min(mostAnEvent, each[way]) - allowed;
      if (sum <= 0) {
        sum = 0;
        run = null;
        continue;
      }
      run ??= { fromMs: each.fromMs, usedL: 0, expectedL: 0 };
      run.usedL += each.usedL;
      run.expectedL += each.expectedL;
      if (sum <= alarm || !isWorthAWord(system, way, run)) continue;
      const last = findings.at(-1);
      if (!last || each.atMs - last.atMs > QUIET_MS) {
        findings.push({ way, atMs: each.atMs, ...run });
      }
      sum = 0;
      run = null;
    }
    return findings;
  });
}

function isWorthAWord(
  { brimL, lowL }: WaterSystem,
  way: WaterFinding['way'],
  { usedL, expectedL }: Pick<WaterFinding, 'usedL' | 'expectedL'>,
): boolean {
  const apart = Math.abs(usedL - expectedL);
  if (apart < LEAST_LITRES_SHARE * (brimL - lowL)) return false;
  const share = usedL / Math.max(expectedL, 1e-9);
  return way === 'above' ? share > LEAST_SHARE.above : share < LEAST_SHARE.below;
}

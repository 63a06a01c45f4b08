import type { DayDriver } from './day-driver.ts';
import { learnHabit, toBrimChance } from './fill-habit.ts';
import { anchorAt, keepAbove, keepUnder, learnLevel, levelOf } from './level-update.ts';
import { advanceBelief, type MovingState } from './water-advance.ts';
import {
  ANCHOR,
  type BeliefPart,
  LOST,
  RATE,
  STATE_SIZE,
  type WaterBelief,
} from './water-belief.ts';
import type { WaterEvent } from './water-event.ts';
import { mergeParts } from './water-merge.ts';
import { amountSdL, FILL_SLOP_SHARE, readingSdL } from './water-reading.ts';
import type { WaterSystem } from './water-system.ts';
import { replant } from './young-crop.ts';

/** Chance that a top-up's amount says nothing (mistyped, another system meant). */
const AMOUNT_ASTRAY = 0.01;
/** Chance that a level reading is of no use. */
const LEVEL_ASTRAY = 0.01;
/** Chance that somebody topped up unasked and unreported before a level reading. */
const FILLED_UNASKED = 0.02;
/** "It is full" is often how a fill is told: from this share of the brim, with this chance. */
const BRIM_SHARE = 0.97;
const FILLED_SAID_AS_LEVEL = 0.5;
/** Chance a day of a step in use (pruned, a harvest untold, a hot tap left on). */
const STEP_A_DAY = 1 / 120;
const STEP_SD_LN = 0.35;
/** A reported cut takes leaves, nobody says how many. */
const CUT_MEAN_LN = -0.12;
const CUT_SD_LN = 0.2;
/** Whoever tops up what has run dry says nothing of it this often. */
const DRY_UNTOLD = 0.2;
/** Pouring past the brim by this share goes unnoticed. */
const OVERFILL_SHARE = 0.02;
/** When only the asked amount is added, people report just that this often. */
const REPORTS_AS_ASKED = 0.9;
/** Of those, some report it as asked even where less went in. */
const SAYS_AS_ASKED_ANYHOW = 0.1;
/** What was read off and what was added miss the brim by more than their errors, sds. */
const CLEARLY_SHORT_SDS = 3;
/** Asked amounts are told in round litres, and repeated as told: within this, or this share if that is less. */
const AS_ASKED_WITHIN_L = 0.5;
const AS_ASKED_WITHIN_SHARE = 0.1;
const AS_ASKED_LEAST_L = 0.1;

/** A way in which something may have come about. */
interface Hypothesis {
  readonly state: MovingState;
  readonly logWeight: number;
  /** Counts for the habit of filling to the brim (1), of adding what was asked (0), or neither. */
  readonly filled: number | null;
}

/** The belief after an event: moved on to its instant, then taught by it. */
export function observe(
  system: WaterSystem,
  before: WaterBelief,
  event: WaterEvent,
  drivers: readonly DayDriver[],
): WaterBelief {
  const belief = advanceBelief(before, event.atMs, drivers);
  const fillSdL = FILL_SLOP_SHARE * system.brimL;
  switch (event.kind) {
    case 'level':
      return weighed(belief, system, (part) => afterLevel(part, event, system));
    case 'top-up':
      return event.litres === null
        ? weighed(belief, system, (part) => afterUntoldTopUp(part, event.askedL, 0, belief, system))
        : weighed(belief, system, (part) =>
            afterTopUp(part, event.litres ?? 0, event, belief, system),
          );
    case 'reservoir-change':
      return weighed(belief, system, (part) => [
        filledTo(part, event.litres ?? system.brimL, fillSdL, 0, null),
      ]);
    case 'unreported-top-up':
      return weighed(belief, system, (part) => [
        ...afterUntoldTopUp(part, event.askedL, Math.log(event.chance), belief, system),
        { state: copyOf(part), logWeight: Math.log1p(-event.chance), filled: null },
      ]);
    case 'planted':
      return weighed(belief, system, (part) => {
        const state = copyOf(part);
        replant(state);
        return [{ state, logWeight: 0, filled: null }];
      });
    case 'cut':
      return weighed(belief, system, (part) => {
        const state = copyOf(part);
        state.mean[RATE] = state.mean[RATE]! + CUT_MEAN_LN;
        widen(state, RATE, RATE, CUT_SD_LN * CUT_SD_LN);
        return [{ state, logWeight: 0, filled: null }];
      });
  }
}

function afterLevel(
  part: BeliefPart,
  event: WaterEvent & { readonly kind: 'level' },
  system: WaterSystem,
): Hypothesis[] {
  const sdL = readingSdL(event.litres, event.approximate, system);
  const anyLevel = -Math.log(system.brimL);
  const isBrim = event.litres >= BRIM_SHARE * system.brimL;
  const unasked = isBrim ? FILLED_SAID_AS_LEVEL : FILLED_UNASKED;
  const filledUnasked = copyOf(part);
  anchorAt(filledUnasked, event.litres, sdL);
  return [
    ...learned(part, event.litres, sdL, Math.log1p(-unasked - LEVEL_ASTRAY), null),
    { state: filledUnasked, logWeight: Math.log(unasked) + anyLevel, filled: null },
    { state: copyOf(part), logWeight: Math.log(LEVEL_ASTRAY) + anyLevel, filled: null },
  ];
}

function afterTopUp(
  part: BeliefPart,
  litres: number,
  event: WaterEvent & { readonly kind: 'top-up' },
  belief: WaterBelief,
  system: WaterSystem,
): Hypothesis[] {
  const sdL = amountSdL(litres, event.approximate, system);
  const fillSdL = FILL_SLOP_SHARE * system.brimL;
  // Told on purpose, it says nothing of how the household tops up else.
  const isShort = isClearlyShort(event, litres, sdL, system);
  const habit = isShort ? LEVEL_ASTRAY : toBrimChance(belief.habit);
  const anyAmount = -Math.log(system.brimL);

  const toBrim = learned(
    part,
    system.brimL - litres,
    sdL,
    Math.log(habit * (1 - AMOUNT_ASTRAY)),
    isShort ? null : 1,
  );
  for (const way of toBrim) anchorAt(way.state, system.brimL, fillSdL);
  const astray = filledTo(part, system.brimL, fillSdL, Math.log(AMOUNT_ASTRAY) + anyAmount, null);

  const added = copyOf(part);
  const wasWet = keepAbove(added, 0);
  added.mean[ANCHOR] = added.mean[ANCHOR]! + litres;
  widen(added, ANCHOR, ANCHOR, sdL * sdL);
  const fits = keepUnder(added, system.brimL * (1 + OVERFILL_SHARE));
  const logAdded = Math.log((1 - habit) * amountDensity(litres, event.askedL, system));
  const filled = isShort ? null : 0;
  return [
    ...toBrim,
    astray,
    { state: added, logWeight: logAdded + Math.log(wasWet * fits), filled },
    filledTo(part, litres, sdL, logAdded + Math.log(DRY_UNTOLD * (1 - wasWet)), filled),
    // Told as asked though less of it went in.
    filledTo(
      part,
      system.brimL,
      fillSdL,
      logAdded + Math.log(SAYS_AS_ASKED_ANYHOW * (1 - fits)),
      filled,
    ),
  ];
}

/** How likely this amount is where an amount is added and the level left to itself, 1/L. */
function amountDensity(litres: number, askedL: number | null, { brimL }: WaterSystem): number {
  if (askedL === null) return 1 / brimL;
  const withinL = Math.min(
    AS_ASKED_WITHIN_L,
    Math.max(AS_ASKED_LEAST_L, AS_ASKED_WITHIN_SHARE * askedL),
  );
  const asAsked = Math.abs(litres - askedL) <= withinL ? REPORTS_AS_ASKED / (2 * withinL) : 0;
  return asAsked + (1 - REPORTS_AS_ASKED) / brimL;
}

/**
 * Whether an amount is too little to have filled the system, by the level that was read off just
 * before it: the reading would have to be of no use.
 */
function isClearlyShort(
  { read }: WaterEvent & { readonly kind: 'top-up' },
  litres: number,
  sdL: number,
  system: WaterSystem,
): boolean {
  if (!read) return false;
  const shortL = system.brimL - read.litres - litres;
  const readSdL = readingSdL(read.litres, read.approximate, system);
  return shortL > CLEARLY_SHORT_SDS * Math.hypot(readSdL, sdL);
}

/** Topped up by an amount nobody told: to the brim, or by what was asked, as the household does it. */
function afterUntoldTopUp(
  part: BeliefPart,
  askedL: number | null,
  logChance: number,
  belief: WaterBelief,
  system: WaterSystem,
): Hypothesis[] {
  const habit = toBrimChance(belief.habit);
  const { litres, variance } = levelOf(part);
  const roomL = Math.max(0, system.brimL - litres);
  const addedL = Math.min(roomL, askedL ?? roomL / 2);
  const addedSdL = askedL === null ? addedL / Math.sqrt(3) : amountSdL(addedL, true, system);
  const added = copyOf(part);
  anchorAt(added, litres + addedL, Math.sqrt(variance + addedSdL * addedSdL));
  keepAbove(added, addedL);
  keepUnder(added, system.brimL * (1 + OVERFILL_SHARE));
  const fillSdL = FILL_SLOP_SHARE * system.brimL;
  return [
    filledTo(part, system.brimL, fillSdL, logChance + Math.log(habit), null),
    { state: added, logWeight: logChance + Math.log1p(-habit), filled: null },
  ];
}

/** The level read, with and without a step in use since the anchor. */
function learned(
  part: BeliefPart,
  levelL: number,
  sdL: number,
  logPrior: number,
  filled: number | null,
): Hypothesis[] {
  const steady = copyOf(part);
  const stepped = copyOf(part);
  const lost = part.mean[LOST]!;
  const daysSince = lost / Math.exp(Math.min(12, part.mean[RATE]!));
  const stepChance = Math.min(0.5, STEP_A_DAY * Math.max(0, daysSince));
  const stepVar = STEP_SD_LN * STEP_SD_LN;
  // On average a step falls in the middle of the time, so half of what was lost felt it.
  widen(stepped, RATE, RATE, stepVar);
  widen(stepped, RATE, LOST, (stepVar * lost) / 2);
  widen(stepped, LOST, LOST, (stepVar * lost * lost) / 3);
  const steadyLog = learnLevel(steady, levelL, sdL);
  const steppedLog = learnLevel(stepped, levelL, sdL);
  return [
    { state: steady, logWeight: logPrior + Math.log1p(-stepChance) + steadyLog, filled },
    { state: stepped, logWeight: logPrior + Math.log(stepChance + 1e-9) + steppedLog, filled },
  ];
}

function filledTo(
  part: BeliefPart,
  litres: number,
  sdL: number,
  logWeight: number,
  filled: number | null,
): Hypothesis {
  const state = copyOf(part);
  anchorAt(state, litres, sdL);
  return { state, logWeight, filled };
}

function copyOf(part: BeliefPart): MovingState {
  return { mean: part.mean.slice(), cov: part.cov.slice() };
}

function widen({ cov }: MovingState, a: number, b: number, by: number): void {
  cov[a * STATE_SIZE + b] = cov[a * STATE_SIZE + b]! + by;
  if (a !== b) cov[b * STATE_SIZE + a] = cov[a * STATE_SIZE + b]!;
}

/** Splits every part over its hypotheses, weighs them all, learns the habit and merges. */
function weighed(
  belief: WaterBelief,
  system: WaterSystem,
  split: (part: BeliefPart) => readonly Hypothesis[],
): WaterBelief {
  const ways = belief.parts.flatMap((part) =>
    split(part).map((way) => ({
      model: part.model,
      way,
      log: Math.log(part.weight) + way.logWeight,
    })),
  );
  const best = ways.reduce((max, { log }) => Math.max(max, log), -Infinity);
  const total = ways.reduce((sum, { log }) => sum + Math.exp(log - best), 0);
  let filled = 0;
  let added = 0;
  const parts = ways.map(({ model, way, log }): BeliefPart => {
    const weight = Math.exp(log - best) / total;
    if (way.filled === 1) filled += weight;
    if (way.filled === 0) added += weight;
    return { model, weight, mean: way.state.mean, cov: way.state.cov };
  });
  return {
    atMs: belief.atMs,
    parts: mergeParts(parts, system),
    habit: learnHabit(belief.habit, filled, added),
  };
}

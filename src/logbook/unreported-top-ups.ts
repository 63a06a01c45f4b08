import type { WaterEvent } from '../estimation/water-event.ts';
import type { SystemId } from '../greenhouse/system.ts';
import type { PastRound } from './rounds.ts';

/**
 * Top-ups that a round asked for and that nobody had reported by the next morning. Were they
 * done all the same? The household shows it: the amount of the next top-up that is reported fits either
 * the days since the unreported one or all the days since the last known fill. Every case settled so
 * makes the chance of the later ones surer; the chance of one case is made of what was settled before
 * it, so that the past of the fold stays as it was.
 */
export function unreportedTopUps(
  said: ReadonlyMap<SystemId, readonly WaterEvent[]>,
  refusedAtMs: ReadonlyMap<SystemId, readonly number[]>,
  rounds: readonly PastRound[],
  nowMs: number,
): ReadonlyMap<SystemId, readonly WaterEvent[]> {
  const found = new Map<SystemId, Unreported[]>();
  const settled: Record<Company, Settled[]> = {
    'one missing': [],
    'two missing': [],
    'none of several': [],
    'the only one': [],
  };
  for (const [position, round] of rounds.entries()) {
    const fromMs = round.sentAtMs;
    const next = rounds[position + 1];
    if (!next && !isOver(round, nowMs)) break;
    const toMs = next?.sentAtMs ?? nowMs;
    const asked = askedSystems(round);
    const untold = asked.filter((system) => !isToldOf(said.get(system) ?? [], fromMs, toMs));
    const isSomeDone = asked.some((system) => isFilled(said.get(system) ?? [], fromMs, toMs));
    const company = companyOf(isSomeDone, untold.length, asked.length);
    const chance = doneChance(settled[company], FIRST[company], fromMs);
    for (const system of untold) {
      const refused = refusedAtMs.get(system) ?? [];
      if (refused.some((atMs) => atMs >= fromMs && atMs < toMs)) continue;
      const atMs = Math.min(fromMs + doneAfterMs, toMs);
      const events = said.get(system) ?? [];
      found.set(system, [
        ...(found.get(system) ?? []),
        { kind: 'unreported-top-up', atMs, chance, askedL: askedL(round, system) },
      ]);
      const shown = shownDone(events, atMs, chance);
      if (shown) settled[company].push(shown);
    }
  }
  return found;
}

/** Of a round that went out this long ago, nothing more is awaited: the next morning has come. */
const awaitedForMs = 20 * 3_600_000;

/** Whether the day of a round is over, though the next round may not have gone out yet. */
export function isOver({ sentAtMs }: PastRound, nowMs: number): boolean {
  return nowMs - sentAtMs >= awaitedForMs;
}

type Unreported = WaterEvent & { readonly kind: 'unreported-top-up' };

/** How many of a round's top-ups were not reported while others were; more than two are as none told. */
type Company = 'one missing' | 'two missing' | 'none of several' | 'the only one';

function companyOf(isSomeDone: boolean, untold: number, asked: number): Company {
  if (asked === 1) return 'the only one';
  if (!isSomeDone || untold > 2) return 'none of several';
  return untold === 1 ? 'one missing' : 'two missing';
}

interface Settled {
  readonly done: number;
  readonly knownAtMs: number;
}

interface Presumed {
  readonly done: number;
  /** As many settled cases as this are worth it. */
  readonly cases: number;
}

/**
 * Common practice: one report in ten is forgotten, and about as many mornings are missed altogether, so
 * that silence about a single top-up says little; silence about several is hardly ever forgetfulness.
 * Whoever reports the others of a round had the list in hand, and leaves one top-up in some hundreds
 * out without a word: 0.1 to 0.003 for one missing, 0.01 for two.
 */
const FIRST: Readonly<Record<Company, Presumed>> = {
  'one missing': { done: 0.97, cases: 10 },
  'two missing': { done: 0.77, cases: 6 },
  'none of several': { done: 0.1, cases: 4 },
  'the only one': { done: 0.5, cases: 2 },
};
/** A duty of the morning is done some time in the morning. */
const doneAfterMs = 2 * 3_600_000;

function askedSystems(round: PastRound): readonly SystemId[] {
  return round.duties.flatMap(({ kind, system }) =>
    kind === 'top-up' && system !== null ? [system] : [],
  );
}

function askedL({ duties }: PastRound, system: SystemId): number | null {
  const asked = duties.find((duty) => duty.kind === 'top-up' && duty.system === system);
  return asked?.litres ?? null;
}

function isToldOf(events: readonly WaterEvent[], fromMs: number, toMs: number): boolean {
  return isThere(events, fromMs, toMs, isWater);
}

function isFilled(events: readonly WaterEvent[], fromMs: number, toMs: number): boolean {
  return isThere(events, fromMs, toMs, isFill);
}

function isThere(
  events: readonly WaterEvent[],
  fromMs: number,
  toMs: number,
  isMeant: (event: WaterEvent) => boolean,
): boolean {
  for (let i = events.length - 1; i >= 0; i -= 1) {
    const event = events[i]!;
    if (event.atMs < fromMs) return false;
    if (isMeant(event) && event.atMs < toMs) return true;
  }
  return false;
}

/** Anything but what was done to the plants. */
function isWater({ kind }: WaterEvent): boolean {
  return kind !== 'cut' && kind !== 'planted';
}

function doneChance(settled: readonly Settled[], first: Presumed, atMs: number): number {
  let cases = first.cases;
  let done = first.done * first.cases;
  for (const { done: share, knownAtMs } of settled) {
    if (knownAtMs >= atMs) continue;
    cases += 1;
    done += share;
  }
  return done / cases;
}

/** Days of one system differ by weather and growth by about this, ln. */
const RATE_SD_LN = 0.4;

/** What the next reported amount says of an unreported top-up at `atMs`; null: nothing. */
function shownDone(events: readonly WaterEvent[], atMs: number, chance: number): Settled | null {
  const next = events.findIndex((event) => event.atMs > atMs && isWater(event));
  const after = events[next];
  if (after?.kind !== 'top-up' || !after.litres) return null;
  const fills = events.slice(0, next).filter(isFill);
  const fill = fills.at(-1);
  const earlier = fills.at(-2);
  if (fill?.kind !== 'top-up' || !fill.litres || !earlier) return null;
  const rateL = fill.litres / (fill.atMs - earlier.atMs);
  const ifDone = misfit(after.litres, rateL * (after.atMs - atMs));
  const ifNot = misfit(after.litres, rateL * (after.atMs - fill.atMs));
  const odds = (chance / (1 - chance)) * Math.exp((ifNot - ifDone) / 2);
  return { done: odds / (1 + odds), knownAtMs: after.atMs };
}

function isFill({ kind }: WaterEvent): boolean {
  return kind === 'top-up' || kind === 'reservoir-change';
}

/** Squared, in standard deviations. */
function misfit(litres: number, expectedL: number): number {
  return (Math.log(litres / Math.max(expectedL, Number.MIN_VALUE)) / RATE_SD_LN) ** 2;
}

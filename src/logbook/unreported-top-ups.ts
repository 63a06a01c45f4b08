import type { WaterEvent } from '../estimation/water-event.ts';
import type { SystemId } from '../greenhouse/system.ts';
import {
  afterShowing,
  afterTelling,
  anyHousehold,
  doneUntold,
  type ReportHabit,
  type RoundDay,
} from './report-habit.ts';
import type { PastRound } from './rounds.ts';

/**
 * Top-ups that a round asked for and that nobody had reported by the next morning. Were they
 * done all the same? The household shows it: the amount of the next top-up that is reported fits either
 * the days since the unreported one or all the days since the last known fill. Every case settled so,
 * and every round that was told of, teaches how the household reports; the chance of one case is made
 * of what was known before it, so that the past of the fold stays as it was.
 */
export function unreportedTopUps(
  said: ReadonlyMap<SystemId, readonly WaterEvent[]>,
  refusedAtMs: ReadonlyMap<SystemId, readonly number[]>,
  rounds: readonly PastRound[],
  nowMs: number,
): ReadonlyMap<SystemId, readonly WaterEvent[]> {
  const found = new Map<SystemId, Unreported[]>();
  let habit = anyHousehold;
  let lessons: readonly Lesson[] = [];
  for (const [position, round] of rounds.entries()) {
    const fromMs = round.sentAtMs;
    const next = rounds[position + 1];
    if (!next && !isOver(round, nowMs)) break;
    const toMs = next?.sentAtMs ?? nowMs;
    const isRefused = (system: SystemId) =>
      (refusedAtMs.get(system) ?? []).some((atMs) => atMs >= fromMs && atMs < toMs);
    const asked = askedSystems(round).filter((system) => !isRefused(system));
    for (const lesson of lessons) if (lesson.knownAtMs < fromMs) habit = lesson.learn(habit);
    lessons = lessons.filter(({ knownAtMs }) => knownAtMs >= fromMs);

    const untold = asked.filter((system) => !isToldOf(said.get(system) ?? [], fromMs, toMs));
    // Asked for or not: what a round asked on the strength of an entry struck since must not count.
    const told = fillsBetween(said, fromMs, toMs);
    const day: RoundDay = { told, untold: untold.length };
    const chance = untold.length > 0 ? doneUntold(habit, day) : 1;
    if (told > 0) habit = afterTelling(habit, day);
    for (const system of untold) {
      const atMs = Math.min(fromMs + doneAfterMs, toMs);
      found.set(system, [
        ...(found.get(system) ?? []),
        { kind: 'unreported-top-up', atMs, chance, askedL: askedL(round, system) },
      ]);
      const shown = shownDone(said.get(system) ?? [], atMs, chance);
      if (!shown) continue;
      const learn = (before: ReportHabit) => afterShowing(before, day, shown.done);
      lessons = [...lessons, { knownAtMs: shown.knownAtMs, learn }];
    }
  }
  return found;
}

/** What a case teaches about the household, from the moment on at which it has shown itself. */
interface Lesson {
  readonly knownAtMs: number;
  readonly learn: (habit: ReportHabit) => ReportHabit;
}

/** Of a round that went out this long ago, nothing more is awaited: the next morning has come. */
const awaitedForMs = 20 * 3_600_000;

/** Whether the day of a round is over, though the next round may not have gone out yet. */
export function isOver({ sentAtMs }: PastRound, nowMs: number): boolean {
  return nowMs - sentAtMs >= awaitedForMs;
}

type Unreported = WaterEvent & { readonly kind: 'unreported-top-up' };

interface Shown {
  readonly done: number;
  readonly knownAtMs: number;
}

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
  return countBetween(events, fromMs, toMs, isWater) > 0;
}

function fillsBetween(
  said: ReadonlyMap<SystemId, readonly WaterEvent[]>,
  fromMs: number,
  toMs: number,
): number {
  let fills = 0;
  for (const events of said.values()) fills += countBetween(events, fromMs, toMs, isFill);
  return fills;
}

/** The newest come last, and are asked about most. */
function countBetween(
  events: readonly WaterEvent[],
  fromMs: number,
  toMs: number,
  isMeant: (event: WaterEvent) => boolean,
): number {
  let count = 0;
  for (let i = events.length - 1; i >= 0 && events[i]!.atMs >= fromMs; i -= 1) {
    const event = events[i]!;
    if (isMeant(event) && event.atMs < toMs) count += 1;
  }
  return count;
}

/** Anything but what was done to the plants. */
function isWater({ kind }: WaterEvent): boolean {
  return kind !== 'cut' && kind !== 'planted';
}

/** Days of one system differ by weather and growth by about this, ln. */
const RATE_SD_LN = 0.4;
/** One amount in ten fits neither: a spurt, a cut, a part poured, another one untold. */
const ASTRAY = 0.1;

/** What the next reported amount says of an unreported top-up at `atMs`; null: nothing. */
function shownDone(events: readonly WaterEvent[], atMs: number, chance: number): Shown | null {
  const next = events.findIndex((event) => event.atMs > atMs && isWater(event));
  const after = events[next];
  if (after?.kind !== 'top-up' || !after.litres) return null;
  const fills = events.slice(0, next).filter(isFill);
  const fill = fills.at(-1);
  const earlier = fills.at(-2);
  if (fill?.kind !== 'top-up' || !fill.litres || !earlier) return null;
  const rateL = fill.litres / (fill.atMs - earlier.atMs);
  const ifDone = likelihood(after.litres, rateL * (after.atMs - atMs));
  const ifNot = likelihood(after.litres, rateL * (after.atMs - fill.atMs));
  const odds = (chance / (1 - chance)) * (ifDone / ifNot);
  return { done: odds / (1 + odds), knownAtMs: after.atMs };
}

function isFill({ kind }: WaterEvent): boolean {
  return kind === 'top-up' || kind === 'reservoir-change';
}

/** Relative to its peak, and never quite nothing: one amount is no proof. */
function likelihood(litres: number, expectedL: number): number {
  const misfit = Math.log(litres / Math.max(expectedL, Number.MIN_VALUE)) / RATE_SD_LN;
  return (1 - ASTRAY) * Math.exp(-(misfit * misfit) / 2) + ASTRAY;
}

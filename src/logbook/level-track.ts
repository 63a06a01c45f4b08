import { type LevelBand, levelBand } from '../estimation/level-band.ts';
import { advanceBelief } from '../estimation/water-advance.ts';
import type { WaterEvent } from '../estimation/water-event.ts';
import { observe } from '../estimation/water-observe.ts';
import type { System } from '../greenhouse/system.ts';
import { type WaterFold, waterSystemOf } from './water-fold.ts';

/** A system's level as it was believed at each time, and as it is expected. Earliest first. */
export interface LevelTrack {
  /** With two points at an event: before it and after. Empty: nothing is known of its water. */
  readonly past: readonly LevelBand[];
  readonly ahead: readonly LevelBand[];
}

export interface TrackSpan {
  readonly fromMs: number;
  readonly nowMs: number;
  readonly untilMs: number;
}

const sampleMs = 6 * 3_600_000;

/**
 * The level from the first thing known of it, or `fromMs`, on: by what the log said up to each time,
 * and not by what was learned later.
 *
 * @throws RangeError where no water is folded for the system.
 */
export function levelTrack(
  fold: WaterFold,
  system: System,
  { fromMs, nowMs, untilMs }: TrackSpan,
): LevelTrack {
  const known = fold.systems.get(system.id);
  const begin =
    known?.checkpoints.findLast(({ belief }) => belief.atMs <= fromMs) ?? known?.checkpoints[0];
  if (!known || !begin) throw new RangeError(`no water is folded for system ${system.id}`);
  const { events } = known;
  const first = firstTold(events);
  if (!first || first.atMs > nowMs) return { past: [], ahead: [] };
  const waterSystem = waterSystemOf(system);
  let { belief } = begin;
  const sinceMs = Math.max(fromMs, first.atMs);
  const past: LevelBand[] = [];
  const advanced = (atMs: number) => advanceBelief(belief, atMs, fold.drivers);
  const sampled = (atMs: number): void => {
    past.push(levelBand(advanced(atMs), system.brimL));
  };
  const sampleUntil = (atMs: number): void => {
    const afterMs = Math.max(belief.atMs, sinceMs);
    for (let at = nextSample(afterMs); at < atMs; at += sampleMs) sampled(at);
  };
  for (const event of events.slice(begin.eventsFolded)) {
    if (event.atMs > nowMs) break;
    sampleUntil(event.atMs);
    if (event.atMs > sinceMs) sampled(event.atMs);
    belief = observe(waterSystem, belief, event, fold.drivers);
    if (event.atMs >= sinceMs) sampled(event.atMs);
  }
  sampleUntil(nowMs);
  sampled(nowMs);
  const ahead: LevelBand[] = [];
  belief = advanced(nowMs);
  for (let at = nowMs; at < untilMs; at += sampleMs) {
    ahead.push(levelBand(advanced(at), system.brimL));
  }
  ahead.push(levelBand(advanced(untilMs), system.brimL));
  return { past, ahead };
}

function nextSample(afterMs: number): number {
  return (Math.floor(afterMs / sampleMs) + 1) * sampleMs;
}

/** Whether there is anything to tell of a system's level at `nowMs`. */
export function isWaterKnown(fold: WaterFold, { id }: System, nowMs: number): boolean {
  const first = firstTold(fold.systems.get(id)?.events ?? []);
  return first !== undefined && first.atMs <= nowMs;
}

/** What nobody said a word about is a guess, and no beginning. */
function firstTold(events: readonly WaterEvent[]): WaterEvent | undefined {
  return events.find(({ kind }) => kind !== 'unreported-top-up');
}

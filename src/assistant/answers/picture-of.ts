import type { Entry } from '../../greenhouse/entry.ts';
import type { System } from '../../greenhouse/system.ts';
import { isWaterKnown, levelTrack } from '../../logbook/level-track.ts';
import { liveEntries } from '../../logbook/logbook.ts';
import type { PictureWish } from '../outgoing.ts';
import type { Picture, Point, ReadingsPicture, WaterPicture } from '../replies/picture.ts';
import { picturedQuantities } from '../replies/picture.ts';
import type { Standing } from '../standing.ts';
import { wantedRange } from '../wanted-range.ts';

const dayMs = 86_400_000;
/** Four weeks show a few top-ups of a thirsty system and a drift of pH. */
const backMs = 28 * dayMs;
const aheadMs = 7 * dayMs;

/** The picture of a system's water or readings; null where nothing is known to be shown. */
export function pictureOf(standing: Standing, wish: Wished, nowMs: number): Picture | null {
  const system = systemIn(standing, wish);
  if (!system) return null;
  return wish.of === 'water'
    ? waterPicture(standing, system, nowMs)
    : readingsPicture(standing, system, nowMs);
}

/** Whether `pictureOf` would give one, without working it out. */
export function canBeDrawn(standing: Standing, wish: Wished, nowMs: number): boolean {
  const system = systemIn(standing, wish);
  if (!system) return false;
  if (wish.of === 'readings') return readingsPicture(standing, system, nowMs) !== null;
  return isWaterKnown(standing.water, system, nowMs);
}

type Wished = Pick<PictureWish, 'system' | 'of'>;

function systemIn({ greenhouse }: Standing, { system }: Wished): System | undefined {
  return greenhouse.systems.find(({ id }) => id === system);
}

function waterPicture(standing: Standing, system: System, nowMs: number): WaterPicture | null {
  const { id, brimL, lowL } = system;
  const untilMs = nowMs + aheadMs;
  const track = levelTrack(standing.water, system, { fromMs: nowMs - backMs, nowMs, untilMs });
  const [first] = track.past;
  if (!first) return null;
  const shown = (quantity: 'top-up' | 'level') =>
    pointsOf(liveEntries(standing.logbook, id, quantity), first.atMs, nowMs);
  return {
    kind: 'water',
    system: id,
    fromMs: first.atMs,
    nowMs,
    untilMs,
    brimL,
    lowL,
    past: track.past.map(rounded),
    ahead: track.ahead.map(rounded),
    topUps: shown('top-up'),
    told: shown('level'),
  };
}

function readingsPicture(
  standing: Standing,
  system: System,
  nowMs: number,
): ReadingsPicture | null {
  const { logbook } = standing;
  const backTo = nowMs - backMs;
  const panels = picturedQuantities.flatMap((quantity) => {
    const points = pointsOf(liveEntries(logbook, system.id, quantity), backTo, nowMs);
    const wanted = wantedRange(system, quantity);
    return points.length > 0 && wanted ? [{ quantity, wanted, points }] : [];
  });
  if (panels.length === 0) return null;
  const firsts = panels.map(({ points }) => points[0]!.atMs);
  const fromMs = Math.min(...firsts);
  const changes = liveEntries(logbook, system.id, 'reservoir-change');
  const changedAtMs = pointsOf(changes, fromMs, nowMs).map(({ atMs }) => atMs);
  return { kind: 'readings', system: system.id, fromMs, nowMs, panels, changedAtMs };
}

function pointsOf(entries: readonly Entry[], fromMs: number, toMs: number): readonly Point[] {
  return entries
    .filter(({ atMs }) => atMs >= fromMs && atMs <= toMs)
    .map(({ atMs, value }) => ({ atMs, value }));
}

/** A tenth of a litre is finer than any line that is drawn. */
function rounded({ atMs, lowL, likelyL, highL }: WaterPicture['past'][number]) {
  const tenth = (litres: number) => Math.round(litres * 10) / 10;
  return {
    atMs: Math.round(atMs),
    lowL: tenth(lowL),
    likelyL: tenth(likelyL),
    highL: tenth(highL),
  };
}

import type { Entry } from '../../greenhouse/entry.ts';
import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { isReading } from '../../greenhouse/quantity.ts';
import type { Logbook } from '../../logbook/logbook.ts';
import type { WaterFold } from '../../logbook/water-fold.ts';
import type { WaterOutlooks } from '../water-outlooks.ts';
import { moveSurprises } from './move-surprises.ts';
import { oneForEachMeter, stillSurprises } from './still-surprises.ts';
import type { Surprise } from './surprise.ts';
import { useSurprises } from './use-surprises.ts';

/** A surprise is told while the entry that brought it is this young. */
const FRESH_MS = 24 * 3_600_000;

export interface FreshSurprise {
  readonly surprise: Surprise;
  /** When the entry that brought it came in. */
  readonly toldAtMs: number;
}

/** What the entries of the last day showed that does not fit; nothing is looked at without such entries. */
export function freshSurprises(
  greenhouse: Greenhouse,
  logbook: Logbook,
  water: WaterFold,
  outlooks: WaterOutlooks,
  nowMs: number,
): readonly FreshSurprise[] {
  const fresh = recentEntries(logbook, nowMs);
  if (fresh.length === 0) return [];
  const has = (system: string | null, isMeant: (entry: Entry) => boolean): boolean =>
    fresh.some((entry) => entry.system === system && isMeant(entry));
  const found = [
    ...greenhouse.systems.flatMap((system) => [
      ...(has(system.id, tellsLevel) ? useSurprises(system, water, outlooks) : []),
      ...(has(system.id, isMoving) ? moveSurprises(system, logbook) : []),
    ]),
    ...(fresh.some(({ quantity }) => isReading(quantity)) ? allStill(greenhouse, logbook) : []),
  ];
  return found.flatMap((surprise) => {
    const by = fresh.find(
      ({ system, atMs }) => system === surprise.system && atMs === surprise.atMs,
    );
    return by ? [{ surprise, toldAtMs: by.recordedAtMs }] : [];
  });
}

/** Looked for everywhere, since one meter may have been read elsewhere before. */
function allStill(greenhouse: Greenhouse, logbook: Logbook): readonly Surprise[] {
  return oneForEachMeter(
    [...greenhouse.systems, null].flatMap((system) => stillSurprises(system, logbook)),
    greenhouse.systems.map(({ id }) => id),
    logbook,
  );
}

function tellsLevel({ quantity }: Entry): boolean {
  return quantity === 'level' || quantity === 'top-up';
}

function isMoving({ quantity }: Entry): boolean {
  return quantity === 'ph' || quantity === 'ec';
}

/** Live entries recorded within the last day; the log's end holds them all. */
function recentEntries({ all }: Logbook, nowMs: number): readonly Entry[] {
  const recent: Entry[] = [];
  for (let i = all.length - 1; i >= 0; i -= 1) {
    const entry = all[i]!;
    if (nowMs - entry.recordedAtMs > FRESH_MS) break;
    if (!entry.struck) recent.push(entry);
  }
  return recent;
}

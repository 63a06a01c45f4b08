import type { SystemId } from '../../greenhouse/system.ts';
import { liveEntries } from '../../logbook/logbook.ts';
import { useSurprises } from '../../planning/surprises/use-surprises.ts';
import { waterOutlooks } from '../../planning/water-outlooks.ts';
import type { Side } from '../../understanding/asking/plain-ask.ts';
import type { PlainAnswer } from '../replies/plain.ts';
import type { Standing } from '../standing.ts';

const DAY_MS = 86_400_000;
const LATELY_DAYS = 7;
/** What was found longer ago says nothing of the use by now. */
const STILL_TOLD_MS = 14 * DAY_MS;

/** What systems use, what they were given of late, and whether that is more or less than was to be expected. */
export function whyUse(
  standing: Standing,
  systems: readonly SystemId[],
  side: Side,
  nowMs: number,
): Extract<PlainAnswer, { kind: 'why-use' }> {
  const { greenhouse, water, logbook } = standing;
  const outlooks = waterOutlooks(greenhouse, water, nowMs);
  const putIn = (system: SystemId, fromMs: number, toMs: number): number =>
    liveEntries(logbook, system, 'top-up')
      .filter(({ atMs }) => atMs > fromMs && atMs <= toMs)
      .reduce((sum, { value }) => sum + value, 0);
  const meant = greenhouse.systems.filter(({ id }) => systems.includes(id));
  const told = meant.map((system) => {
    const lately = nowMs - LATELY_DAYS * DAY_MS;
    const way = side === 'high' ? 'above' : 'below';
    const found = useSurprises(system, water, outlooks).findLast(
      (each) => each.kind === 'use' && each.way === way && nowMs - each.atMs < STILL_TOLD_MS,
    );
    return {
      system: system.id,
      usePerDayL: outlooks.get(system.id)!.usePerDay,
      lately: {
        days: LATELY_DAYS,
        litres: putIn(system.id, lately, nowMs),
        beforeL: putIn(system.id, lately - LATELY_DAYS * DAY_MS, lately),
      },
      found: found ?? null,
    };
  });
  return { kind: 'why-use', side, systems: told };
}

import type { SystemId } from '../../greenhouse/system.ts';
import { seasonOf } from '../../planning/season.ts';
import { waterOutlooks } from '../../planning/water-outlooks.ts';
import type { PlainAnswer } from '../replies/plain.ts';
import type { Standing } from '../standing.ts';

/** Systems side by side: how they work, what they grow and gave, what they drink. */
export function compared(
  { greenhouse, logbook, water, createdAtMs }: Standing,
  systems: readonly SystemId[],
  nowMs: number,
): Extract<PlainAnswer, { kind: 'compared' }> {
  const outlooks = waterOutlooks(greenhouse, water, nowMs);
  const season = seasonOf(greenhouse, logbook, createdAtMs, nowMs);
  return {
    kind: 'compared',
    systems: season.systems
      .filter(({ system }) => systems.includes(system))
      .map((figures) => ({ figures, usePerDayL: outlooks.get(figures.system)!.usePerDay })),
  };
}

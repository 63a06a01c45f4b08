import type { WaterOutlook } from '../../estimation/water-outlook.ts';
import { localDateOf } from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { waterOutlooks } from '../../planning/water-outlooks.ts';
import type { Lasting } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

/** How long the water of the given systems lasts, in the greenhouse's order. */
export function lastingOf(
  standing: Standing,
  systems: readonly SystemId[],
  nowMs: number,
): readonly Lasting[] {
  const outlooks = waterOutlooks(standing.greenhouse, standing.water, nowMs);
  return systems.map((system) => lasting(system, outlooks.get(system)!, standing));
}

function lasting(system: SystemId, water: WaterOutlook, standing: Standing): Lasting {
  const { timeZone } = standing.greenhouse;
  const dateOf = (atMs: number | null) => (atMs === null ? null : localDateOf(atMs, timeZone));
  return {
    system,
    litres: water.band.likelyL,
    usePerDayL: water.usePerDay,
    lowOnEarly: dateOf(water.lowAtMs.p5),
    lowOnLikely: dateOf(water.lowAtMs.p50),
    lowOnLate: dateOf(water.lowAtMs.p95),
  };
}

import {
  instantOf,
  type LocalDate,
  type LocalTime,
  plusDays,
} from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { liveEntries } from '../../logbook/logbook.ts';
import { waterOutlooks } from '../../planning/water-outlooks.ts';
import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

const midnight = '00:00' as LocalTime;

/** Litres that were added to systems on the local dates `from` to `to`, both included. */
export function useBetween(
  standing: Standing,
  systems: readonly SystemId[],
  from: LocalDate,
  to: LocalDate,
  nowMs: number,
): Answer {
  const { greenhouse, logbook, water } = standing;
  const fromMs = instantOf(from, midnight, greenhouse.timeZone);
  const untilMs = instantOf(plusDays(to, 1), midnight, greenhouse.timeZone);
  const outlooks = waterOutlooks(greenhouse, water, nowMs);
  return {
    kind: 'use',
    from,
    to,
    systems: systems.map((system) => ({
      system,
      toppedUpL: liveEntries(logbook, system, 'top-up')
        .filter(({ atMs }) => atMs >= fromMs && atMs < untilMs)
        .reduce((sum, entry) => sum + entry.value, 0),
      usePerDayL: outlooks.get(system)!.usePerDay,
    })),
  };
}

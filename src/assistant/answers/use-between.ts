import { instantOf, type LocalTime, localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { liveEntries } from '../../logbook/logbook.ts';
import { waterOutlooks } from '../../planning/water-outlooks.ts';
import type { Ask } from '../../understanding/statement.ts';
import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

const midnight = '00:00' as LocalTime;

/** Litres that were added to systems on the local dates `from` to `to`, both included; ranked: the thirstiest first. */
export function useBetween(
  standing: Standing,
  asked: Pick<Extract<Ask, { kind: 'use' }>, 'from' | 'to' | 'isRanked' | 'isWhole'>,
  systems: readonly SystemId[],
  nowMs: number,
): Answer {
  const { greenhouse, logbook, water } = standing;
  const { to, isRanked, isWhole } = asked;
  const beganOn = localDateOf(logbook.all[0]?.atMs ?? nowMs, greenhouse.timeZone);
  const from = isWhole && asked.from < beganOn ? beganOn : asked.from;
  const fromMs = instantOf(from, midnight, greenhouse.timeZone);
  const untilMs = instantOf(plusDays(to, 1), midnight, greenhouse.timeZone);
  const outlooks = waterOutlooks(greenhouse, water, nowMs);
  const used = systems.map((system) => ({
    system,
    toppedUpL: liveEntries(logbook, system, 'top-up')
      .filter(({ atMs }) => atMs >= fromMs && atMs < untilMs)
      .reduce((sum, entry) => sum + entry.value, 0),
    usePerDayL: outlooks.get(system)!.usePerDay,
  }));
  if (!isRanked) return { kind: 'use', from, to, systems: used };
  const ranked = used.toSorted((one, other) => other.usePerDayL - one.usePerDayL);
  return { isRanked, kind: 'use', from, to, systems: ranked };
}

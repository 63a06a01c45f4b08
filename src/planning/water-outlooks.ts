import { outlook, type WaterOutlook } from '../estimation/water-outlook.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { instantOf, localDateOf, plusDays } from '../greenhouse/local-time.ts';
import type { SystemId } from '../greenhouse/system.ts';
import { beliefOf, type WaterFold, waterSystemOf } from '../logbook/water-fold.ts';
import { raiseAtMostL } from './fill-ceiling.ts';

/** How far ahead visits are thought of, in days. */
export const visitDays = 60;
/** A duty of the morning is done some time after the round: this long after, at the latest. */
export const visitAfterRoundMs = 3 * 3_600_000;

/** Today's chance to go is now; on later days it is some hours after the round. */
export function visitInstants(greenhouse: Greenhouse, nowMs: number): readonly number[] {
  const today = localDateOf(nowMs, greenhouse.timeZone);
  return Array.from({ length: visitDays + 1 }, (_, days) =>
    days === 0
      ? nowMs
      : instantOf(plusDays(today, days), greenhouse.morning, greenhouse.timeZone) +
        visitAfterRoundMs,
  );
}

/** What is to be expected of each system's water from `nowMs` on. */
export function waterOutlooks(
  greenhouse: Greenhouse,
  water: WaterFold,
  nowMs: number,
): ReadonlyMap<SystemId, WaterOutlook> {
  const visitsAtMs = visitInstants(greenhouse, nowMs);
  return new Map(
    greenhouse.systems.map((system) => [
      system.id,
      outlook(waterSystemOf(system), beliefOf(water, system.id), {
        atMs: nowMs,
        drivers: water.drivers,
        visitsAtMs,
        raiseAtMostL: raiseAtMostL(system),
      }),
    ]),
  );
}

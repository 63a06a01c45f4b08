import type { WaterBelief } from '../estimation/water-belief.ts';
import { amongOthers } from '../estimation/water-house.ts';
import { outlook, type WaterOutlook } from '../estimation/water-outlook.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { instantOf, type LocalDate, localDateOf, plusDays } from '../greenhouse/local-time.ts';
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
  const known = laterVisits.get(greenhouse);
  if (known?.today === today) return [nowMs, ...known.visitsAtMs];
  const visitsAtMs = Array.from(
    { length: visitDays },
    (_, days) =>
      instantOf(plusDays(today, days + 1), greenhouse.morning, greenhouse.timeZone) +
      visitAfterRoundMs,
  );
  laterVisits.set(greenhouse, { today, visitsAtMs });
  return [nowMs, ...visitsAtMs];
}

/** The same all day long, and most of what an outlook costs: sixty mornings in a zone of the world. */
const laterVisits = new WeakMap<
  Greenhouse,
  { readonly today: LocalDate; readonly visitsAtMs: readonly number[] }
>();

/** Outlooks by system; undefined where the greenhouse has no such system. */
export type WaterOutlooks = Pick<ReadonlyMap<SystemId, WaterOutlook>, 'get'>;

/**
 * What is to be expected of each system's water from `nowMs` on. It reaches weeks ahead and is worked
 * out for those systems only that are asked about, since every receipt asks about its own.
 */
export function waterOutlooks(
  greenhouse: Greenhouse,
  water: WaterFold,
  nowMs: number,
): WaterOutlooks {
  const known = new Map<SystemId, WaterOutlook>();
  let visitsAtMs: readonly number[] | null = null;
  return {
    get: (id) => {
      const system = greenhouse.systems.find((each) => each.id === id);
      if (!system || known.has(id)) return known.get(id);
      const found = outlook(waterSystemOf(system), beliefInHouse(greenhouse, water, id), {
        atMs: nowMs,
        drivers: water.drivers,
        visitsAtMs: (visitsAtMs ??= visitInstants(greenhouse, nowMs)),
        raiseAtMostL: raiseAtMostL(system),
      });
      known.set(id, found);
      return found;
    },
  };
}

/** What is believed of a system's water, its other systems' days counted in. */
export function beliefInHouse(
  { systems }: Greenhouse,
  water: WaterFold,
  id: SystemId,
): WaterBelief {
  const others = systems.filter((other) => other.id !== id);
  return amongOthers(
    beliefOf(water, id),
    others.map((other) => beliefOf(water, other.id)),
  );
}

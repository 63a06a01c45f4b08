import { hasAirPump, hasPump } from '../../greenhouse/devices.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import type { Settled } from './settled.ts';

type Found = Pick<Settled, 'systems' | 'askSystem' | 'assumptions'>;

/** `the pump of the jars has stopped`, where nothing moves their water: of which system, of those that have one? */
export function withDevice(found: Found, { quantity, of }: Fact, all: readonly System[]): Found {
  const isOfPump =
    (quantity === 'outage' || quantity === 'restored') && (of === 'pump' || of === 'air-pump');
  if (!isOfPump || !found.systems?.some(standsStill)) return found;
  const offer = all.filter((system) => !standsStill(system));
  if (offer.length === 0) return found;
  return { systems: [], askSystem: { offer, written: null }, assumptions: [] };
}

/** Nothing moves its water, nor air through it. */
function standsStill(system: System): boolean {
  const { method, aeration } = system;
  const hasNone = aeration === null && !hasPump(system) && !hasAirPump(system);
  return method === 'non-circulating' && hasNone;
}

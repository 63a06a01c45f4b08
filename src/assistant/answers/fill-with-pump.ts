import type { System, SystemId } from '../../greenhouse/system.ts';
import { fillTimeMinutes } from '../../science/hydraulics/fill-time.ts';
import { pumpFlowLPerH } from '../../science/hydraulics/pump-flow.ts';
import { litre, litrePerHour } from '../../science/units/amount.ts';
import type { Ask } from '../../understanding/statement.ts';
import type { AdviceAnswer } from '../replies/advice.ts';
import type { Standing } from '../standing.ts';

/** A small pump lifts its water about half as high as it can: then it gives half its rated flow. */
const LIFT_SHARE = 0.5;
const ANY_MAX_HEAD_M = 2;

/** How long a pump of a rated flow takes to fill what a system holds; null where no sum holds. */
export function fillWithPump(
  { greenhouse }: Standing,
  { ratedLPerH }: Extract<Ask, { kind: 'fill-with-pump' }>,
  systems: readonly SystemId[],
): Extract<AdviceAnswer, { kind: 'fill-with-pump' }> | null {
  const asked = greenhouse.systems.filter(({ id }) => systems.includes(id));
  const flooded = asked.filter(({ floods }) => floods !== null);
  const filled = (flooded.length > 0 ? flooded : asked).flatMap((system) => {
    const times = timesOf(system, ratedLPerH);
    return times ? [times] : [];
  });
  return filled.length > 0 ? { kind: 'fill-with-pump', ratedLPerH, systems: filled } : null;
}

function timesOf(system: System, ratedLPerH: number) {
  // A flood moves what may leave the reservoir; any other system is filled whole.
  const litres = system.floods ? system.brimL - system.lowL : system.brimL;
  const rated = litrePerHour(ratedLPerH);
  const lifted = pumpFlowLPerH({
    pump: { ratedLPerH: rated, maxHeadM: ANY_MAX_HEAD_M },
    liftM: LIFT_SHARE * ANY_MAX_HEAD_M,
  });
  const least = fillTimeMinutes(litre(litres), rated);
  if (!lifted.ok || !least.ok) return null;
  const most = fillTimeMinutes(litre(litres), lifted.value);
  if (!most.ok) return null;
  return {
    system: system.id,
    litres,
    leastMin: least.value,
    mostMin: most.value,
    usualMin: system.floods?.fillMin ?? null,
  };
}

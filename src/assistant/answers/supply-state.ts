import type { Supply } from '../../greenhouse/entry.ts';
import { allOutages } from '../../planning/outages.ts';
import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

/** Whether the power or a pump is out, as far as it was told: what is out now, else what was out last. */
export function supplyState({ logbook, greenhouse }: Standing, of: Supply): Answer {
  const ids = greenhouse.systems.map(({ id }) => id);
  const outages = allOutages(logbook, ids).filter((outage) => outage.of === of);
  const open = outages.filter(({ untilMs }) => untilMs === null);
  const told = open.length > 0 ? open : outages.slice(-1);
  return {
    kind: 'supply',
    of,
    outages: told.map(({ system, sinceMs, untilMs }) => ({ system, sinceMs, untilMs })),
  };
}

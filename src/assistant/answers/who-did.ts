import { readings } from '../../greenhouse/quantity.ts';
import type { Ask } from '../../understanding/statement.ts';
import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

const told = 3;

/** Who logged the latest entries of the kind asked about. */
export function whoDid(standing: Standing, ask: Extract<Ask, { kind: 'who' }>): Answer {
  const entries = standing.logbook.all
    .filter(
      (entry) =>
        !entry.struck &&
        // A probe belongs to no system.
        (ask.system === null || ask.quantity === 'calibration' || entry.system === ask.system) &&
        (ask.quantity === null ? !isReadingOnly(entry.quantity) : entry.quantity === ask.quantity),
    )
    .toSorted((one, other) => other.atMs - one.atMs)
    .slice(0, told);
  return { kind: 'who', entries };
}

/** Asked "who did the jars", people mean the work, not who read a meter. */
function isReadingOnly(quantity: string): boolean {
  return (readings as readonly string[]).includes(quantity);
}

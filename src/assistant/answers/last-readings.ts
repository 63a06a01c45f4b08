import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { latestEntry } from '../../logbook/logbook.ts';
import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

/** The latest reading of a quantity, of these systems; null: of each that has any. */
export function lastReadings(
  standing: Standing,
  quantity: Quantity,
  systems: readonly SystemId[] | null,
): Answer {
  const places = systems ?? [null, ...standing.greenhouse.systems.map(({ id }) => id)];
  const entries = places.flatMap((place) => {
    const entry = latestEntry(standing.logbook, place, quantity);
    return entry ? [entry] : [];
  });
  return { kind: 'last-reading', quantity, entries };
}

import type { Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { latestEntry } from '../../logbook/logbook.ts';
import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

/** The latest reading of a quantity, of one system or of each that has any. */
export function lastReadings(
  standing: Standing,
  quantity: Quantity,
  system: SystemId | null,
): Answer {
  const places =
    system === null ? [null, ...standing.greenhouse.systems.map(({ id }) => id)] : [system];
  const entries = places.flatMap((place) => {
    const entry = latestEntry(standing.logbook, place, quantity);
    return entry ? [entry] : [];
  });
  return { kind: 'last-reading', quantity, entries };
}

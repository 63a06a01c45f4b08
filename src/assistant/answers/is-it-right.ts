import type { SystemId } from '../../greenhouse/system.ts';
import { latestEntry } from '../../logbook/logbook.ts';
import type { Ask } from '../../understanding/statement.ts';
import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';
import { wantedRange } from '../wanted-range.ts';

/** Holds a value, or the last reading, against what each system wants. */
export function isItRight(
  standing: Standing,
  ask: Extract<Ask, { kind: 'is-it-right' }>,
  systems: readonly SystemId[],
): Answer {
  return {
    kind: 'is-it-right',
    quantity: ask.quantity,
    systems: standing.greenhouse.systems.flatMap((system) => {
      const range = wantedRange(system, ask.quantity);
      if (!systems.includes(system.id) || !range) return [];
      const latest = latestEntry(standing.logbook, system.id, ask.quantity);
      const value = ask.value ?? latest?.value ?? null;
      return [{ system: system.id, value, lowest: range[0], highest: range[1] }];
    }),
  };
}

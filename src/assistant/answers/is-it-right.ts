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
  const meant = whoseValue(standing, ask, systems);
  return {
    kind: 'is-it-right',
    quantity: ask.quantity,
    systems: standing.greenhouse.systems.flatMap((system) => {
      const range = wantedRange(system, ask.quantity);
      if (!meant.includes(system.id) || !range) return [];
      const latest = latestEntry(standing.logbook, system.id, ask.quantity);
      const value = ask.value ?? latest?.value ?? null;
      return [{ system: system.id, value, lowest: range[0], highest: range[1] }];
    }),
  };
}

/** `was 5.4 too low`, of no system named: of the one where that was read last, if there is one. */
function whoseValue(
  { logbook }: Standing,
  { system, quantity, value }: Extract<Ask, { kind: 'is-it-right' }>,
  systems: readonly SystemId[],
): readonly SystemId[] {
  if (system !== null || value === null || systems.length < 2) return systems;
  const read = systems.filter((id) => latestEntry(logbook, id, quantity)?.value === value);
  return read.length > 0 ? read : systems;
}

import type { Quantity } from '../greenhouse/quantity.ts';
import type { SystemId } from '../greenhouse/system.ts';
import { type Logbook, latestEntry } from '../logbook/logbook.ts';

/** Any of these tells where the water stands. */
const tellsLevel = ['level', 'top-up', 'reservoir-change'] as const satisfies readonly Quantity[];

/** Whether anybody has said how full a system is, or filled it. */
export function isLevelKnown(logbook: Logbook, system: SystemId): boolean {
  return tellsLevel.some((quantity) => latestEntry(logbook, system, quantity) !== null);
}

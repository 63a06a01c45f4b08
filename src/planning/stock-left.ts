import type { Greenhouse, StockItem } from '../greenhouse/greenhouse.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';

type Systems = Pick<Greenhouse, 'systems' | 'formerSystems'>;

/** mL of a product in all the doses logged from an instant on, of systems given up as well. */
export function usedMl(
  product: string,
  { systems, formerSystems = [] }: Systems,
  logbook: Logbook,
  fromMs: number = Number.NEGATIVE_INFINITY,
): number {
  return [null, ...[...systems, ...formerSystems].map(({ id }) => id)]
    .flatMap((system) => liveEntries(logbook, system, 'dose'))
    .filter((entry) => entry.product === product && entry.atMs >= fromMs)
    .reduce((sum, entry) => sum + entry.value, 0);
}

/** mL of a product that is left, by the stock as set up and the doses logged since. */
export function stockLeftMl(item: StockItem, systems: Systems, logbook: Logbook): number {
  return Math.max(0, item.mL - usedMl(item.product, systems, logbook));
}

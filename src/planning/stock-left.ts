import type { Greenhouse, StockItem } from '../greenhouse/greenhouse.ts';
import { type Logbook, liveEntries } from '../logbook/logbook.ts';

/** mL of a product that is left, by the stock as set up and the doses logged since. */
export function stockLeftMl(
  item: StockItem,
  { systems }: Pick<Greenhouse, 'systems'>,
  logbook: Logbook,
): number {
  const used = [null, ...systems.map(({ id }) => id)]
    .flatMap((system) => liveEntries(logbook, system, 'dose'))
    .filter((entry) => entry.product === item.product)
    .reduce((sum, entry) => sum + entry.value, 0);
  return Math.max(0, item.mL - used);
}

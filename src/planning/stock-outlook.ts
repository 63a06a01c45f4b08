import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { type LocalDate, localDateOf, localTimeOf, plusDays } from '../greenhouse/local-time.ts';
import type { Logbook } from '../logbook/logbook.ts';
import { stockLeftMl, usedMl } from './stock-left.ts';

/** What is left of a product, and how long it lasts at the pace of the last weeks. */
export interface StockLine {
  readonly product: string;
  readonly leftMl: number;
  /** null: none was used of late, so nothing can be said. */
  readonly lastsDays: number | null;
  readonly emptyOn: LocalDate | null;
}

const dayMs = 24 * 3_600_000;
/** The pace is that of the last four weeks, or of a younger logbook's days, but of no less than a week. */
const paceDays = 28;
const leastPaceDays = 7;
/** Told while an order still comes in time. */
const orderWithinDays = 21;
/** From here on it is told every day, and before that on the day of the weekly shopping. */
const urgentWithinDays = 4;
/** Saturday, counted from Monday as 1. */
const shoppingWeekday = 6;

export function stockOutlook(
  greenhouse: Greenhouse,
  logbook: Logbook,
  nowMs: number,
): readonly StockLine[] {
  const { stock, timeZone } = greenhouse;
  const today = localDateOf(nowMs, timeZone);
  return stock.map((item): StockLine => {
    const { product } = item;
    const leftMl = stockLeftMl(item, greenhouse, logbook);
    const perDayMl = paceMlPerDay(product, greenhouse, logbook, nowMs);
    const lastsDays = perDayMl > 0 ? Math.floor(leftMl / perDayMl) : null;
    const emptyOn = lastsDays === null ? null : plusDays(today, lastsDays);
    return { product, leftMl, lastsDays, emptyOn };
  });
}

/** mL of a product a day, by the doses logged of late. */
export function paceMlPerDay(
  product: string,
  greenhouse: Greenhouse,
  logbook: Logbook,
  nowMs: number,
): number {
  const firstMs = logbook.all[0]?.atMs ?? nowMs;
  const days = Math.min(paceDays, Math.max(leastPaceDays, (nowMs - firstMs) / dayMs));
  return usedMl(product, greenhouse, logbook, nowMs - days * dayMs) / days;
}

/** What is to be bought: empty, or gone before an order would surely have come. */
export function toBuy(lines: readonly StockLine[]): readonly StockLine[] {
  return lines.filter(
    ({ leftMl, lastsDays }) => leftMl === 0 || (lastsDays !== null && lastsDays <= orderWithinDays),
  );
}

/** What a round says of it: all of it on the shopping day, else only what cannot wait for that. */
export function shoppingOfDay(
  greenhouse: Greenhouse,
  logbook: Logbook,
  nowMs: number,
): readonly StockLine[] {
  const lines = toBuy(stockOutlook(greenhouse, logbook, nowMs));
  if (localTimeOf(nowMs, greenhouse.timeZone).weekday === shoppingWeekday) return lines;
  return lines.filter(({ lastsDays }) => lastsDays !== null && lastsDays <= urgentWithinDays);
}

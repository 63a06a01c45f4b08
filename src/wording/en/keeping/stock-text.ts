import type { KeepingAnswer } from '../../../assistant/replies/keeping.ts';
import type { StockLine } from '../../../planning/stock-outlook.ts';
import { measure } from '../../spoken/measure.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { productName } from '../names.ts';

const mlPerLitre = 1000;

/** `400 mL`, `1.8 L`. */
export function stockAmount(mL: number, s: Speaker): string {
  return s.amount(mL < mlPerLitre ? measure(mL, 'mL', 0, 0) : measure(mL / mlPerLitre, 'L', 0, 2));
}

export function stockAnswer(
  { product, lines, buy }: Extract<KeepingAnswer, { kind: 'stock' }>,
  s: Speaker,
): string {
  if (lines.length === 0) {
    const what = product === null ? 'any bottle' : productName(product);
    return `I know nothing of ${what} in stock. Tell me what there is: “bought 1 l ${productName(product ?? 'ph-down')}”.`;
  }
  const listed = lines.map((line) => `${s.capital(stockLine(line, s))}.`);
  const shopping = product === null ? [shoppingText(buy, s) ?? 'Nothing needs buying yet.'] : [];
  return [...listed, ...shopping].join('\n');
}

/** `To buy: …`; null: nothing. */
export function shoppingText(buy: readonly StockLine[], s: Speaker): string | null {
  if (buy.length === 0) return null;
  const items = buy.map(({ product, leftMl, lastsDays }) =>
    leftMl === 0
      ? `${productName(product)} (used up)`
      : `${productName(product)} (lasts ${lastsText(lastsDays ?? 0)})`,
  );
  return `To buy: ${s.and(items)}.`;
}

function stockLine({ product, leftMl, lastsDays }: StockLine, s: Speaker): string {
  if (leftMl === 0) return `${productName(product)}: used up`;
  const lasts = lastsDays === null ? 'none used of late' : `lasts ${lastsText(lastsDays)}`;
  return `${productName(product)}: ${stockAmount(leftMl, s)} left, ${lasts}`;
}

const daysPerWeek = 7;
const toldInDays = 14;
const longDays = 120;

function lastsText(days: number): string {
  if (days < 1) return 'less than a day';
  if (days === 1) return 'about a day';
  if (days < toldInDays) return `about ${days} days`;
  if (days > longDays) return 'for months';
  return `about ${Math.round(days / daysPerWeek)} weeks`;
}

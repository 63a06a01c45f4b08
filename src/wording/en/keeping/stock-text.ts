import type { KeepingAnswer } from '../../../assistant/replies/keeping.ts';
import type { RainLine } from '../../../planning/rain-left.ts';
import type { StockLine } from '../../../planning/stock-outlook.ts';
import type { DoubtReason } from '../../../understanding/statement.ts';
import { exampleButtL } from '../../spoken/examples.ts';
import { measure } from '../../spoken/measure.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { productName } from '../names.ts';

const mlPerLitre = 1000;

/** `400 mL`, `1.8 L`. */
export function stockAmount(mL: number, s: Speaker): string {
  return s.amount(mL < mlPerLitre ? measure(mL, 'mL', 0, 0) : measure(mL / mlPerLitre, 'L', 0, 2));
}

export function stockAnswer(
  { product, lines, buy, rain }: Extract<KeepingAnswer, { kind: 'stock' }>,
  s: Speaker,
): string {
  if (lines.length === 0 && !rain) {
    const what = product === null ? 'any bottle' : productName(product);
    return `I know nothing of ${what} in stock. Tell me what there is: “bought 1 l ${productName(product ?? 'ph-down')}”.`;
  }
  const listed = lines.map((line) => `${s.capital(stockLine(line, s))}.`);
  const shopping = product === null ? [shoppingText(buy, s) ?? 'Nothing needs buying yet.'] : [];
  return [...listed, ...(rain ? [rainText(rain, s)] : []), ...shopping].join('\n');
}

/** A bottle was opened: what there is stays, and how to say what does change it. */
export function openedAnswer(
  { product, line }: Extract<KeepingAnswer, { kind: 'stock-opened' }>,
  s: Speaker,
): string {
  const name = productName(product);
  const ways = `If it is newly bought, say “bought 1 l ${name}”; to count what there is, “900 ml ${name} left”.`;
  return line
    ? `An opened bottle changes nothing in what there is. ${s.capital(stockLine(line, s))}.\n${ways}`
    : `I know nothing of ${name} in stock yet.\n${ways}`;
}

/** Asks for what was bought or is left. */
export function howMuchStock(
  { product, is, leftMl }: Extract<DoubtReason, { kind: 'how-much-stock' }>,
  s: Speaker,
): string {
  const name = productName(product);
  if (is === 'bought') return `How much ${name} was bought in all? For example “1 l”.`;
  const reckoned =
    leftMl === null ? '' : ` By the doses logged it should be ${stockAmount(leftMl, s)}.`;
  return `About how much ${name} is left? For example “300 ml”.${reckoned}`;
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

/** How much rain water there is; null where a round has nothing to say of it. */
export function rainText({ litres, leftL, lastsDays }: RainLine, s: Speaker): string {
  const size = s.amount(measureOf('level', litres, s.units));
  if (leftL === null) {
    return `Rain butt: it holds ${size}. How full is it? Say for example “butt is full”.`;
  }
  if (leftL === 0) return 'Rain butt: empty by what was drawn. Say “butt is full” once it is.';
  const lasts =
    lastsDays === null ? 'none drawn of late' : `lasts ${lastsText(lastsDays)} without rain`;
  return `Rain butt: about ${s.amount(roughVolume(leftL, s.units.volume))} of ${size} left, ${lasts}.`;
}

export function rainAnswer({ rain }: Extract<KeepingAnswer, { kind: 'rain' }>, s: Speaker): string {
  return rain
    ? rainText(rain, s)
    : `I know of no rain butt. Tell me how much it holds: “rain butt ${s.amount(measureOf('level', exampleButtL[s.units.volume], s.units))}”.`;
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

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

/** `400 ml`, `1,8 l`. */
export function stockAmount(mL: number, s: Speaker): string {
  return s.amount(mL < mlPerLitre ? measure(mL, 'mL', 0, 0) : measure(mL / mlPerLitre, 'L', 0, 2));
}

export function stockAnswer(
  { product, lines, buy, rain }: Extract<KeepingAnswer, { kind: 'stock' }>,
  s: Speaker,
): string {
  if (lines.length === 0 && !rain) {
    const what = product === null ? 'Flaschen' : productName(product);
    return `Von ${what} im Vorrat weiß ich nichts. Sag mir, was da ist: „1 l ${productName(product ?? 'ph-down')} gekauft“.`;
  }
  const listed = lines.map((line) => `${s.capital(stockLine(line, s))}.`);
  const shopping = product === null ? [shoppingText(buy, s) ?? 'Zu kaufen ist noch nichts.'] : [];
  return [...listed, ...(rain ? [rainText(rain, s)] : []), ...shopping].join('\n');
}

/** A bottle was opened: what there is stays, and how to say what does change it. */
export function openedAnswer(
  { product, line }: Extract<KeepingAnswer, { kind: 'stock-opened' }>,
  s: Speaker,
): string {
  const name = productName(product);
  const ways = `Ist sie neu gekauft, sag „1 l ${name} gekauft“; zum Zählen „noch 900 ml ${name} da“.`;
  return line
    ? `Eine angebrochene Flasche ändert nichts am Vorrat. ${s.capital(stockLine(line, s))}.\n${ways}`
    : `Von ${name} im Vorrat weiß ich noch nichts.\n${ways}`;
}

/** Asks for what was bought or is left. */
export function howMuchStock(
  { product, is, leftMl }: Extract<DoubtReason, { kind: 'how-much-stock' }>,
  s: Speaker,
): string {
  const name = productName(product);
  if (is === 'bought') return `Wie viel ${name} wurde insgesamt gekauft? Zum Beispiel „1 l“.`;
  const reckoned =
    leftMl === null
      ? ''
      : ` Nach den eingetragenen Gaben müssten es ${stockAmount(leftMl, s)} sein.`;
  return `Wie viel ${name} ist ungefähr noch da? Zum Beispiel „300 ml“.${reckoned}`;
}

/** `Zu kaufen: …`; null: nichts. */
export function shoppingText(buy: readonly StockLine[], s: Speaker): string | null {
  if (buy.length === 0) return null;
  const items = buy.map(({ product, leftMl, lastsDays }) =>
    leftMl === 0
      ? `${productName(product)} (aufgebraucht)`
      : `${productName(product)} (reicht ${lastsText(lastsDays ?? 0)})`,
  );
  return `Zu kaufen: ${s.and(items)}.`;
}

function stockLine({ product, leftMl, lastsDays }: StockLine, s: Speaker): string {
  if (leftMl === 0) return `${productName(product)}: aufgebraucht`;
  const lasts = lastsDays === null ? 'zuletzt nichts verbraucht' : `reicht ${lastsText(lastsDays)}`;
  return `${productName(product)}: noch ${stockAmount(leftMl, s)}, ${lasts}`;
}

/** How much rain water there is. */
export function rainText({ litres, leftL, lastsDays }: RainLine, s: Speaker): string {
  const size = s.amount(measureOf('level', litres, s.units));
  if (leftL === null) {
    return `Regentonne: Sie fasst ${size}. Wie voll ist sie? Sag zum Beispiel „Tonne ist voll“.`;
  }
  if (leftL === 0) {
    return 'Regentonne: leer nach dem, was entnommen wurde. Sag „Tonne ist voll“, sobald sie es ist.';
  }
  const lasts =
    lastsDays === null ? 'zuletzt nichts entnommen' : `reicht ohne Regen ${lastsText(lastsDays)}`;
  return `Regentonne: noch etwa ${s.amount(roughVolume(leftL, s.units.volume))} von ${size}, ${lasts}.`;
}

export function rainAnswer({ rain }: Extract<KeepingAnswer, { kind: 'rain' }>, s: Speaker): string {
  return rain
    ? rainText(rain, s)
    : `Von einer Regentonne weiß ich nichts. Sag mir, wie viel sie fasst: „Regentonne ${s.amount(measureOf('level', exampleButtL[s.units.volume], s.units))}“.`;
}

const daysPerWeek = 7;
const toldInDays = 14;
const longDays = 120;

function lastsText(days: number): string {
  if (days < 1) return 'keinen Tag mehr';
  if (days === 1) return 'etwa einen Tag';
  if (days < toldInDays) return `etwa ${days} Tage`;
  if (days > longDays) return 'noch Monate';
  return `etwa ${Math.round(days / daysPerWeek)} Wochen`;
}

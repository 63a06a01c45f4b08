import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import { depth } from '../spoken/depth.ts';
import { asWritten, measure } from '../spoken/measure.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { quantityNames } from './names.ts';

/** `pH 5,8`, `EC 1,7 mS/cm`, `12 l`: a value that says what it is where its unit does not. */
export function valueText(quantity: Quantity, value: number, s: Speaker): string {
  const amount = s.amount(measureOf(quantity, value, s.units));
  return quantity === 'ph' || quantity === 'ec' ? `${quantityNames[quantity]} ${amount}` : amount;
}

/** The same as somebody typed it: `pH 54`. */
export function writtenText(quantity: Quantity, value: number, s: Speaker): string {
  const amount = s.amount(asWritten(measureOf(quantity, value, s.units)));
  return quantity === 'ph' || quantity === 'ec' ? `${quantityNames[quantity]} ${amount}` : amount;
}

/** `5,5 bis 6,2`, with the unit. */
export function rangeText(quantity: Quantity, lowest: number, highest: number, s: Speaker): string {
  const [from, to] = s.range(
    measureOf(quantity, lowest, s.units),
    measureOf(quantity, highest, s.units),
  );
  return `${from} bis ${to}`;
}

/** How a level was said: `52 cm tief`, `5 cm unter dem Rand`, `zu 50 % voll`. */
export function saidLevelText(said: NonNullable<EntryDraft['saidAs']>, s: Speaker): string {
  switch (said.kind) {
    case 'depth':
      return `${s.amount(depth(said.cm, s.units.volume))} tief`;
    case 'below-brim':
      return `${s.amount(depth(said.cm, s.units.volume))} unter dem Rand`;
    case 'share':
      if (said.share === 1) return 'voll';
      return `zu ${s.amount(measure(100 * said.share, '%', 0, 0))} voll`;
  }
}

import type { PictureWords } from '../wording.ts';
import { measureOf } from './measure-of-quantity.ts';
import type { Speaker } from './speaker.ts';

/** How a picture counts, in the units that the household speaks in. */
export function pictureScale(s: Speaker): Pick<PictureWords, 'onAxis' | 'number' | 'day'> {
  const numbers = new Intl.NumberFormat(s.locale, { maximumFractionDigits: 2 });
  return {
    number: (value) => numbers.format(value),
    onAxis: (quantity, value) => measureOf(quantity, value, s.units).value,
    day: (date) => s.shortDay(date),
  };
}

import type { Measure } from './measure.ts';

// Making an Intl format costs more than a hundred uses of it.
const formats = new Map<string, Intl.NumberFormat>();

/** A measure's number without its unit. Thousands are parted from five digits on: 1240 is no decimal. */
export function numberText(told: Measure, locale: string): string {
  const { leastDecimals, mostDecimals } = told;
  const key = `${locale} ${leastDecimals} ${mostDecimals}`;
  let format = formats.get(key);
  if (!format) {
    format = new Intl.NumberFormat(locale, {
      minimumFractionDigits: leastDecimals,
      maximumFractionDigits: mostDecimals,
      useGrouping: 'min2',
    });
    formats.set(key, format);
  }
  // A value that rounds to nothing is told without its sign.
  return format.format(Math.abs(told.value) < 0.5 * 10 ** -mostDecimals ? 0 : told.value);
}

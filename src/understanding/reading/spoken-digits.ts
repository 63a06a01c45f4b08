import { isLabel } from '../moods/clause-kinds.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import { type MeasureTerm, means, type Term } from './term.ts';

/** `five nine ph`, `ec one four`: two digits in words beside their label are a whole and its decimal. */
export function joinSpokenDigits(terms: readonly Term[]): readonly Term[] {
  const joined: Term[] = [];
  for (let i = 0; i < terms.length; i++) {
    const [whole, rest] = [terms[i]!, terms[i + 1]];
    const isPair = isSpokenDigit(whole) && isSpokenDigit(rest) && !isSpokenDigit(terms[i + 2]);
    if (isPair && !isSpokenDigit(terms[i - 1]) && isLabelled(joined, terms[i + 2])) {
      joined.push(decimalOf(whole, rest));
      i += 1;
    } else joined.push(whole);
  }
  return joined;
}

function isSpokenDigit(term: Term | undefined): term is MeasureTerm {
  if (term?.kind !== 'measure' || !isBare(term.measure) || !term.measure.whole) return false;
  const [value] = term.measure.values;
  return value !== undefined && value <= 9 && /^\p{L}+$/u.test(term.text);
}

/** Read beside it; of a temperature the two would be tens and ones. */
function isLabelled(before: readonly Term[], after: Term | undefined): boolean {
  let at = before.length - 1;
  while (at >= 0 && means(before[at], 'link', 'about', 'filler') && !isLabel(before[at])) at--;
  return [before[at], after].some((term) => means(term, 'ph', 'ec'));
}

function decimalOf(whole: MeasureTerm, rest: MeasureTerm): MeasureTerm {
  const value = whole.measure.values[0]! + rest.measure.values[0]! / 10;
  const text = `${whole.text} ${rest.text}`;
  const measure = {
    ...whole.measure,
    values: [Number(value.toFixed(1))],
    written: text,
    whole: false,
    decimals: 1,
  };
  return { ...whole, to: rest.to, text, measure };
}

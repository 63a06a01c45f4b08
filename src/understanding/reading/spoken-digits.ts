import { isLabel } from '../moods/clause-kinds.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import { measureTerm } from './make-term.ts';
import { type MeasureTerm, means, type Term, type WordTerm } from './term.ts';

/** `five nine ph`, `ec one four`: two digits in words beside their label are a whole and its decimal. */
export function joinSpokenDigits(terms: readonly Term[]): readonly Term[] {
  const joined: Term[] = [];
  for (let i = 0; i < terms.length; i++) {
    const [whole, rest] = [terms[i]!, terms[i + 1]];
    const isPair =
      isDigit(whole) && isDigit(rest) && !isDigit(terms[i + 2]) && !isDigit(terms[i - 1]);
    if (isPair && endsValue(rest, terms, i + 2) && isLabelled(joined, terms[i + 2])) {
      joined.push(decimalOf(whole, rest));
      i += 1;
    } else joined.push(whole);
  }
  return joined;
}

type SpokenDigit = MeasureTerm | WordTerm;

function isDigit(term: Term | undefined): term is SpokenDigit {
  if (term?.kind === 'word') return isOne(term);
  if (term?.kind !== 'measure' || !isBare(term.measure) || !term.measure.whole) return false;
  const [value] = term.measure.values;
  return value !== undefined && value <= 9 && /^\p{L}+$/u.test(term.text);
}

/** `one`, `eins`: alone it is no measure. */
function isOne({ word, text }: WordTerm): boolean {
  return word.number === 1 && !text.includes(' ');
}

/** `ph six one gutters`, not `ph six one more can`: a one that counts nothing. */
function endsValue(rest: SpokenDigit, terms: readonly Term[], end: number): boolean {
  if (rest.kind === 'measure') return true;
  const next = means(terms[end], 'article') ? terms[end + 1] : terms[end];
  return next === undefined || next.kind === 'stop' || next.kind === 'name' || isLabel(next);
}

/** Read beside it; of a temperature the two would be tens and ones. */
function isLabelled(before: readonly Term[], after: Term | undefined): boolean {
  let at = before.length - 1;
  while (at >= 0 && means(before[at], 'link', 'about', 'filler') && !isLabel(before[at])) at--;
  return [before[at], after].some((term) => means(term, 'ph', 'ec'));
}

function digitOf(term: SpokenDigit): number {
  return term.kind === 'word' ? 1 : term.measure.values[0]!;
}

function decimalOf(whole: SpokenDigit, rest: SpokenDigit): MeasureTerm {
  const value = digitOf(whole) + digitOf(rest) / 10;
  const text = `${whole.text} ${rest.text}`;
  const measure: Measure = {
    values: [Number(value.toFixed(1))],
    unit: null,
    approximate: whole.kind === 'measure' && whole.measure.approximate,
    bound: false,
    share: false,
    disputedBy: undefined,
    written: text,
    whole: false,
    decimals: 1,
  };
  const { from, glued } = whole;
  return measureTerm({ from, to: rest.to, text, glued }, measure);
}

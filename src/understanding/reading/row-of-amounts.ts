import type { Measure } from '../numbers/measure.ts';
import { isBare, isVolume, unitIs } from '../numbers/quantity-of-measure.ts';
import type { Lexicon } from './lexicon.ts';
import { measureTerm, stopBefore } from './make-term.ts';
import { countOf } from './shared-container.ts';
import { type MeasureTerm, means, type Term } from './term.ts';

/** More than so many cans go into nothing at a time. */
const mostContainers = 20;

/**
 * `put 2 cans bench 1 buckets`, `20 l bench 10 l buckets`: each amount stands before its own system, with nothing
 * between them; they are cut, and a count alone is of the vessel told first. Where it was said that water was added, a
 * bare number is of the unit told first as well: `topped up 12 l bench, 3 buckets`.
 */
export function withRowsOfAmounts(terms: readonly Term[], lexicon: Lexicon): readonly Term[] {
  if (!terms.some(isName) || !terms.some(isAmount)) return terms;
  const kept: Term[] = [];
  let isLed = false;
  for (let i = 0; i < terms.length; i++) {
    const opens = i === 0 || terms[i - 1]!.kind === 'stop';
    const isVerb = means(terms[i], 'add', 'top-up', 'fill');
    isLed ||= means(terms[i], 'add', 'top-up');
    const row = isVerb || opens ? rowFrom(terms, isVerb ? i + 1 : i, lexicon, isLed) : null;
    if (isVerb || !row) kept.push(terms[i]!);
    if (!row) continue;
    kept.push(...row.terms);
    i = row.end - 1;
  }
  return kept;
}

interface Row {
  readonly terms: readonly Term[];
  readonly end: number;
}

function rowFrom(
  terms: readonly Term[],
  from: number,
  lexicon: Lexicon,
  isLed: boolean,
): Row | null {
  const first = terms[from];
  if (!isAmount(first)) return null;
  const row: Term[] = [];
  let at = from;
  let groups = 0;
  for (;;) {
    const isParted = terms[at]?.kind === 'stop' && groups > 0;
    const start = isParted ? at + 1 : at;
    const amount = amountAt(terms[start], first, lexicon, isLed);
    const name = amount === null ? -1 : nameBehind(terms, start);
    if (amount === null || name < 0) break;
    if (isParted) row.push(terms[at]!);
    else if (groups > 0) row.push(stopBefore(amount, 'comma'));
    row.push(amount, ...terms.slice(start + 1, name + 1));
    at = name + 1;
    groups++;
  }
  const isAll = at >= terms.length || terms[at]!.kind === 'stop';
  return groups > 1 && isAll ? { terms: row, end: at } : null;
}

/** An amount with its unit, or how many of the unit or the vessel told first. */
function amountAt(
  term: Term | undefined,
  first: MeasureTerm,
  lexicon: Lexicon,
  isLed: boolean,
): MeasureTerm | null {
  const { unit } = first.measure;
  if (term?.kind === 'measure') {
    const { measure } = term;
    if (isVolumeTold(measure)) return term;
    // `5.8 buckets` may be their pH.
    if (isLed && isBare(measure) && measure.whole) return measureTerm(term, { ...measure, unit });
  }
  if (!term || unit === null || !('litres' in unit)) return null;
  const count = countOf(term, lexicon, false);
  if (count === null || count > mostContainers) return null;
  const measure = { ...first.measure, values: [count], written: term.text, whole: true };
  return measureTerm(term, { ...measure, share: false, decimals: 0 });
}

/** The system straight behind an amount, or after `in the`; -1: there is none. */
function nameBehind(terms: readonly Term[], amount: number): number {
  let at = amount + 1;
  if (means(terms[at], 'place') && !means(terms[at], 'of', 'from')) at++;
  if (means(terms[at], 'article')) at++;
  return isName(terms[at]) ? at : -1;
}

function isName(term: Term | undefined): boolean {
  return term?.kind === 'name';
}

function isAmount(term: Term | undefined): term is MeasureTerm {
  return term?.kind === 'measure' && isVolumeTold(term.measure);
}

function isVolumeTold(measure: Measure): boolean {
  return isVolume(measure) && !unitIs(measure, 'ml', 'cl');
}

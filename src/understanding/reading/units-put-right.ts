import type { Measure } from '../numbers/measure.ts';
import type { Lexicon } from './lexicon.ts';
import { type MeasureTerm, means, type Term } from './term.ts';
import type { Unit } from './word-list.ts';

/**
 * `added 5 l to the jars, sorry ml`, `700 ppm, I mean µS`: a clause that says nothing but another unit, and that the one
 * before was a slip. Of several amounts that it may be of each is in dispute.
 */
export function withUnitsPutRight(terms: readonly Term[], lexicon: Lexicon): readonly Term[] {
  const at = terms.findIndex(isCorrecting);
  if (at < 0 || !terms.slice(0, at).some(isMeasureTerm)) return terms;
  for (let from = at; from < terms.length; from++) {
    if (!isCorrecting(terms[from]!)) continue;
    const said = unitsSaid(terms, from, lexicon);
    if (said) return corrected(terms, from, said);
  }
  return terms;
}

interface UnitsSaid {
  readonly meant: Unit;
  readonly givenUp: Unit | null;
  /** The word for the one meant. */
  readonly written: string;
  /** Where what says so ends. */
  readonly end: number;
}

export function unitAt(
  terms: readonly Term[],
  at: number,
  { units, own }: Lexicon,
): { readonly value: Unit; readonly length: number } | null {
  if (terms[at]?.kind === 'stop') return null;
  const textAt = (offset: number): string | null => terms[at + offset]?.text ?? null;
  const found = units.longest(textAt) ?? own.units.longest(textAt);
  return found && !('id' in found.value && found.value.id === 'unknown') ? found : null;
}

function unitsSaid(terms: readonly Term[], from: number, lexicon: Lexicon): UnitsSaid | null {
  let meant: Unit | null = null;
  let givenUp: Unit | null = null;
  let isNext = false;
  let written = '';
  let i = from;
  let behindUnit = from;
  while (i < terms.length) {
    const term = terms[i]!;
    const unit = unitAt(terms, i, lexicon);
    if (unit) {
      if (isNext ? givenUp : meant) return null;
      if (isNext) givenUp = unit.value;
      else [meant, written] = [unit.value, term.text];
      isNext = false;
      i += unit.length;
      behindUnit = i;
      continue;
    }
    if (term.kind === 'stop' && term.cut !== 'comma' && meant) break;
    if (givesUp(term)) isNext = true;
    else if (!isCorrecting(term) && !isBeside(term)) {
      // What follows in a clause of its own is of something else.
      if (meant && terms[i - 1]?.kind === 'stop') break;
      // `3 cans, sorry, jugs, to the bench`: where it went is told behind it.
      if (!meant || term.kind !== 'name' || !means(terms[behindPause(terms, behindUnit)], 'place'))
        return null;
      return { meant, givenUp, written, end: behindUnit };
    }
    i += 1;
  }
  return meant && { meant, givenUp, written, end: i };
}

function behindPause(terms: readonly Term[], i: number): number {
  return terms[i]?.kind === 'stop' ? i + 1 : i;
}

function corrected(
  terms: readonly Term[],
  from: number,
  { meant, givenUp, written, end }: UnitsSaid,
): readonly Term[] {
  const isOfIt = (term: Term, i: number): term is MeasureTerm =>
    i < from &&
    isMeasureTerm(term) &&
    term.measure.unit !== null &&
    (givenUp === null || isSameUnit(term.measure.unit, givenUp)) &&
    !isSameUnit(term.measure.unit, meant);
  const fitting = terms.filter(isOfIt);
  if (fitting.length === 0) return terms;
  const better = (term: MeasureTerm): Term => {
    const said = `${term.measure.values[0]!} ${written}`;
    const measure: Measure = { ...term.measure, unit: meant, written: said };
    return {
      ...term,
      measure: fitting.length === 1 ? measure : { ...term.measure, disputedBy: measure },
    };
  };
  const cut = terms[from - 1]?.kind === 'stop' ? from - 1 : from;
  return [
    ...terms.slice(0, cut).map((term, i) => (isOfIt(term, i) ? better(term) : term)),
    ...terms.slice(end),
  ];
}

function isMeasureTerm(term: Term): term is MeasureTerm {
  return term.kind === 'measure';
}

function isSameUnit(one: Unit, other: Unit): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function isCorrecting(term: Term): boolean {
  return means(term, 'sorry', 'no-wait', 'meant', 'rather') || givesUp(term);
}

function givesUp(term: Term): boolean {
  return means(term, 'not', 'instead-of', 'did-not') && !means(term, 'link');
}

function isBeside(term: Term): boolean {
  if (term.kind === 'stop') return term.cut === 'comma';
  return means(term, 'self', 'filler', 'pronoun', 'article', 'link', 'was', 'said-no');
}

import { cmFactor, isBare, unitIs } from '../numbers/quantity-of-measure.ts';
import { measureTerm } from './make-term.ts';
import { type MeasureTerm, means, type Term } from './term.ts';

/**
 * `the bench was 80 cm, now 75`, `80 % and is 70 now`: a number without a unit, told as what it is by now of the same
 * water, is in the unit of what it was. Only of heights and shares, which nothing else is told in.
 */
export function withUnitsOfNow(terms: readonly Term[]): readonly Term[] {
  const first = terms.findIndex(isOfWater);
  if (first < 0) return terms;
  let was = terms[first] as MeasureTerm;
  const told = [...terms];
  for (let i = first + 1; i < told.length; i++) {
    const term = told[i]!;
    if (term.kind === 'measure') {
      if (isOfWater(term)) {
        was = term;
        continue;
      }
      if (!isOfNow(told, i)) return told;
      const { measure } = term as MeasureTerm;
      was = measureTerm(term, { ...measure, unit: was.measure.unit });
      told[i] = was;
    } else if (!mayStandBetween(term)) return told;
  }
  return told;
}

function isOfWater(term: Term): term is MeasureTerm {
  return (
    term.kind === 'measure' && (cmFactor(term.measure) !== null || unitIs(term.measure, 'percent'))
  );
}

/** Led or followed by `now`, by no name of its own, and with nothing behind it that it may be of. */
function isOfNow(terms: readonly Term[], i: number): boolean {
  const term = terms[i];
  if (term?.kind !== 'measure' || !isBare(term.measure)) return false;
  const next = terms[i + 1];
  const isFollowed = means(next, 'now');
  let before = i - 1;
  while (
    means(terms[before], 'link', 'article', 'pronoun', 'filler') &&
    !means(terms[before], 'now')
  )
    before--;
  const isLed = means(terms[before], 'now');
  const isLast = next === undefined || next.kind === 'stop' || isFollowed || means(next, 'place');
  return isLast && (isLed || (isFollowed && terms[before]?.kind !== 'name'));
}

function mayStandBetween(term: Term): boolean {
  return (
    term.kind === 'stop' ||
    term.kind === 'name' ||
    means(term, 'now', 'link', 'article', 'pronoun', 'filler', 'place', 'level', 'was')
  );
}

import { isLabel } from '../moods/clause-kinds.ts';
import { gramsFactor, isBare, isVolume } from '../numbers/quantity-of-measure.ts';
import { measureTerm } from './make-term.ts';
import { isMark, type MeasureTerm, means, type Term } from './term.ts';

/** `30, 12 and 2 litres`, `topped up 10, 10 and 5 l`, `added 5 then 3 l`: a list of numbers, and their one unit told with the last. */
export function shareVolume(terms: readonly Term[]): readonly Term[] {
  const shared = [...terms];
  for (let i = 2; i < shared.length; i++) {
    const last = shared[i]!;
    if (last.kind !== 'measure' || !(isVolume(last.measure) || isMass(last))) continue;
    const first = startOfList(shared, i);
    if (first === null) continue;
    for (let j = first; j < i; j += 2) {
      const number = shared[j] as MeasureTerm;
      shared[j] = measureTerm(number, { ...number.measure, unit: last.measure.unit });
    }
  }
  return shared;
}

/** Where the whole numbers begin that lead up to the one at `last`, each behind a cut; null if what is before them may own them. */
function startOfList(terms: readonly Term[], last: number): number | null {
  let first = last;
  while (isNumber(terms[first - 2]) && isJoint(terms[first - 1])) first -= 2;
  if (first === last || terms[last - 1]?.text === ',') return null;
  const lead = terms[first - 1];
  // `350 and 420 g`: so many of what else, nobody tells before grams.
  if (isMass(terms[last]) && (lead === undefined || lead.kind === 'stop')) return first;
  // `EC: 4 and 1 ml A`: the label's own number.
  if (isMark(lead, ':') && isLabel(terms[first - 2])) return null;
  return isMark(lead, ':') || means(lead, 'top-up', 'add', 'with') ? first : null;
}

function isMass(term: Term | undefined): boolean {
  return term?.kind === 'measure' && gramsFactor(term.measure) !== null;
}

function isNumber(term: Term | undefined): boolean {
  return term?.kind === 'measure' && isBare(term.measure) && term.measure.whole;
}

function isJoint(term: Term | undefined): boolean {
  return (
    term?.kind === 'stop' && (term.cut === 'comma' || term.cut === 'and' || term.cut === 'then')
  );
}

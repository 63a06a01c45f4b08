import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  isPadding,
  measureOf,
  measuresIn,
  namesIn,
  takeRange,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';

/** `two cans into the bench, then another one`: more of the container that was told just before, in a clause of its own. */
export function recogniseOneMore(frame: Frame, told: readonly Fact[]): Fact[] {
  return frame.clauses.flatMap((clause, c): Fact[] => {
    const again = asMuchAgain(frame, clause);
    const isElsewhere = goesElsewhere(frame, clause);
    const isSome = isElsewhere && saysSome(frame, clause);
    const isMore = saysOnlyMore(frame, clause) || (isElsewhere && saysOne(frame, clause));
    if (again === null && !isSome && !isMore) return [];
    // `…, then another`: nothing stands between the comma and `then`.
    const last = frame.clauses.findLastIndex(({ from, to }, i) => i < c && from < to);
    const before = told.findLast(({ at }) => frame.clauseOf[at] === last);
    if (before?.quantity !== 'top-up' || before.doubt || before.each) return [];
    const { amount } = before;
    if (again !== null && amount.kind === 'measure') {
      takeRange(frame, clause.from, clause.to);
      return [{ ...before, at: again, from: again, to: again, because: 'as much again' }];
    }
    if (isSome) {
      const place = clause.from;
      takeRange(frame, place, clause.to);
      const missing = { kind: 'missing' } as const;
      return [
        { ...before, amount: missing, at: place, from: place, to: place, because: 'some more' },
      ];
    }
    if (amount.kind !== 'measure' || !isContainer(amount.measure)) return [];
    const [at] = measuresIn(frame, clause);
    const values = at === undefined ? [1] : measureOf(frame, at).values;
    takeRange(frame, clause.from, clause.to);
    const measure = { ...amount.measure, values, written: frame.terms[clause.from]!.text };
    const place = at ?? clause.from;
    return [
      {
        ...before,
        amount: { ...amount, measure },
        at: place,
        from: place,
        to: place,
        because: 'one more',
      },
    ];
  });
}

/** `5 l into the dwc, then as much again`: nothing else is said, so of the same system. */
function asMuchAgain(frame: Frame, clause: Clause): number | null {
  const [at] = inClause(frame, clause, (term) => means(term, 'as-much-again'));
  const isAlone = frame.terms
    .slice(clause.from, clause.to)
    .every((term) => isPadding(term) || means(term, 'as-much-again', 'after', 'then', 'filler'));
  return at !== undefined && isAlone ? at : null;
}

function isContainer({ unit }: Measure): boolean {
  return unit !== null && 'litres' in unit;
}

/** `another`, `one more`, `noch eine`, `and 2 more`: nothing but how many more. */
function saysOnlyMore(frame: Frame, clause: Clause): boolean {
  if (!clauseHas(frame, clause, 'another')) return false;
  const terms = frame.terms.slice(clause.from, clause.to);
  const numbers = terms.filter((term) => isMeasure(term));
  return (
    numbers.length <= 1 && terms.every((term, n) => !frame.taken[clause.from + n] && isOfMore(term))
  );
}

/** `… in the buckets`: one system, behind a word that leads to it. */
function goesElsewhere(frame: Frame, clause: Clause): boolean {
  if (namesIn(frame, clause).length !== 1) return false;
  const terms = frame.terms.slice(clause.from, clause.to);
  return terms.some((term, n) => means(term, 'place') && leadsToName(terms, n));
}

/** `…, one more in the buckets`, `…, einen in die Wanne`: the same vessel once, and where it went. */
function saysOne(frame: Frame, clause: Clause): boolean {
  const terms = frame.terms.slice(clause.from, clause.to);
  if (terms.some((term) => isMeasure(term))) return false;
  return (
    terms.some((term) => means(term, 'another', 'indefinite') || isOne(frame, term)) &&
    terms.every(
      (term, n) =>
        !frame.taken[clause.from + n] &&
        (term.kind === 'name' || isOfMore(term) || means(term, 'place') || isOne(frame, term)),
    )
  );
}

/** `…, a little more in the jars`: more of it went there, and nobody has said how much. */
function saysSome(frame: Frame, clause: Clause): boolean {
  const [first, ...rest] = frame.terms.slice(clause.from, clause.to);
  return (
    means(first, 'ish') &&
    rest.every((term) => term.kind === 'name' || isPadding(term) || means(term, 'place'))
  );
}

function leadsToName(terms: readonly Term[], place: number): boolean {
  const next = means(terms[place + 1], 'article') ? place + 2 : place + 1;
  return terms[next]?.kind === 'name';
}

/** `one`, `einer`: a number's word that is no measure by itself. */
function isOne({ lexicon }: Frame, term: Term): boolean {
  return term.kind === 'word' && lexicon.own.phrases.get([term.text])?.number === 1;
}

function isOfMore(term: Term): boolean {
  if (isMeasure(term)) return isBare(term.measure) && term.measure.whole;
  return isPadding(term) || means(term, 'another', 'after', 'then', 'article', 'indefinite');
}

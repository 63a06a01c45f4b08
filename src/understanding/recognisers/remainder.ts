import type { Fact } from '../fact.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isVolumeTerm,
  measuresIn,
  namesIn,
} from '../reading/frame.ts';
import { means } from '../reading/term.ts';

/** `a third of the can into the gutters, the rest into the jars`: how much that was is to be asked. */
export function recogniseRemainders(frame: Frame): Fact[] {
  return frame.clauses.flatMap((clause): Fact[] => {
    const rest = inClause(frame, clause, (term) => means(term, 'remainder'))[0];
    if (rest === undefined || !isPoured(frame, clause, rest)) return [];
    return [
      {
        quantity: 'top-up',
        amount: { kind: 'missing' },
        at: rest,
        from: rest,
        to: rest,
        because: 'the rest of an amount',
      },
    ];
  });
}

/** Into a system that is named, where water is spoken of. */
function isPoured(frame: Frame, clause: Clause, rest: number): boolean {
  if (measuresIn(frame, clause).some((i) => !frame.taken[i])) return false;
  if (isOfProduct(frame, rest)) return false;
  const leads = namesIn(frame, clause).some((i) => {
    const before = means(frame.terms[i - 1], 'article') ? i - 2 : i - 1;
    return (
      i > rest &&
      means(frame.terms[before], 'place', 'add') &&
      !means(frame.terms[before], 'of', 'from')
    );
  });
  if (!leads) return false;
  const start = frame.sentences[clause.sentence]![0]!.from;
  const said = { from: start, to: clause.to };
  return (
    clauseHas(frame, said, 'add', 'top-up', 'fill', 'refill') ||
    frame.places.hasWhere(isVolumeTerm, start, clause.to)
  );
}

/** `the rest of the pH down`: no water. */
function isOfProduct({ terms }: Frame, rest: number): boolean {
  if (!means(terms[rest + 1], 'of')) return false;
  const of = terms[means(terms[rest + 2], 'article') ? rest + 3 : rest + 2];
  return (
    of?.kind === 'word' &&
    (of.word.product !== null || of.word.shyProduct !== null || of.word.anyProduct)
  );
}

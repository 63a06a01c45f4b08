import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  isVolumeTerm,
  measureOf,
  measuresIn,
  namesIn,
  take,
} from '../reading/frame.ts';
import { isUnknown, means, type Term } from '../reading/term.ts';
import { verbOf } from './top-up-verb.ts';

interface Poured {
  readonly fact: Fact;
  /** The verb in the clause after, which has its amount. */
  readonly verb: number;
}

/**
 * `carried 3 cans over and poured them into the bench`, `3 Kannen geholt und alle in den Tisch gekippt`: an amount of no
 * system, and right after it where all of it went. Null: something else is told.
 */
export function fetchedAndPoured(frame: Frame, c: number): Poured | null {
  const [clause, next] = [frame.clauses[c]!, frame.clauses[c + 1]];
  if (next === undefined || (next.opens !== 'and' && next.opens !== 'comma')) return null;
  const system = whereItWent(frame, next);
  if (system === null) return null;
  const [at, ...others] = measuresIn(frame, clause).filter((i) => !frame.timed[i]);
  if (at === undefined || others.length > 0 || !isFetching(frame, clause, at)) return null;
  const verb = verbOf(frame, next);
  if (verb === null) return null;
  take(frame, at);
  const fact: Fact = {
    quantity: 'top-up',
    amount: { kind: 'measure', measure: measureOf(frame, at) },
    at,
    from: at,
    to: at,
    inTurn: system,
    because: 'fetched, and poured into it',
  };
  return { fact, verb };
}

/** The one system that a clause of nothing but a verb of adding names after a word of place. */
function whereItWent(frame: Frame, clause: Clause): SystemId | null {
  const [name, ...others] = namesIn(frame, clause);
  if (name === undefined || others.length > 0) return null;
  const { terms } = frame;
  const term = terms[name]!;
  if (term.kind !== 'name' || !term.sure || term.systems.length !== 1) return null;
  const lead = means(terms[name - 1], 'article') ? name - 2 : name - 1;
  if (lead < clause.from || !means(terms[lead], 'place')) return null;
  if (!clauseHas(frame, clause, 'add', 'goes-in')) return null;
  if (frame.places.hasWhere(tellsMore, clause.from, clause.to)) return null;
  return term.systems[0]!;
}

function tellsMore(term: Term): boolean {
  if (term.kind === 'name') return false;
  return !means(
    term,
    'add',
    'goes-in',
    'article',
    'pronoun',
    'place',
    'all',
    'of',
    'filler',
    'self',
  );
}

/** Water in litres or vessels, of which no more is told than that it was brought. */
function isFetching(frame: Frame, clause: Clause, at: number): boolean {
  // Millilitres may be of a product.
  const isWater = isVolumeTerm(frame.terms[at]!) && !unitIs(measureOf(frame, at), 'ml', 'cl');
  if (!isWater || namesIn(frame, clause).length > 0) return false;
  // `12 l, added to the jars` under `How much?`: may be the answer, with something else done beside it.
  const isAlone = clause.to - clause.from === 1;
  if (isAlone && frame.context.openQuestions.length > 0) return false;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (i !== at && !frame.timed[i] && !isUnknown(term) && !isOfFetching(term)) return false;
  }
  return true;
}

function isOfFetching(term: Term): boolean {
  return means(
    term,
    'add',
    'pick',
    'take-away',
    'fill',
    'other-water',
    'solution',
    'from',
    'place',
    'article',
    'filler',
    'self',
    'link',
    'about',
    'beyond',
    'just-now',
  );
}

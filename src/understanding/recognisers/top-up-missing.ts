import { isReadInVessel } from '../moods/of-a-vessel.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isVolumeTerm,
  namesIn,
} from '../reading/frame.ts';
import { isUnknown, means, type Term } from '../reading/term.ts';

/** A verb that speaks of topping up, or of water, needs its amount; `put the lid on` does not. */
export function asksForAmount(frame: Frame, clause: Clause, verb: number): boolean {
  const verbs = inClause(frame, clause, (term) =>
    means(term, 'top-up', 'fill', 'refill', 'add', 'add-plainly'),
  );
  const strong = verbs.some((i) => means(frame.terms[i], 'top-up', 'fill', 'refill'));
  const products = inClause(
    frame,
    clause,
    (term) =>
      term.kind === 'word' &&
      (term.word.product !== null || (term.word.shyProduct !== null && means(term, 'brim'))),
  );
  if (products.length > 0) return false;
  // `everything but the top-ups`: what was left out.
  if (inClause(frame, clause, (term, i) => i < verb && means(term, 'except')).length > 0)
    return false;
  if (strong) return namesIn(frame, clause).length > 0 || !hasOtherObject(frame, clause, verb);
  return (
    (clauseHas(frame, clause, 'solution') && !means(frame.terms[verb], 'link')) ||
    isPouredSomewhere(frame, clause, verb) ||
    isGivenByReference(frame, clause, verb)
  );
}

/** `gave it that`, `fed the buckets their can`, `the bench got its usual`: how much, the words leave to be known. */
function isGivenByReference(frame: Frame, clause: Clause, verb: number): boolean {
  const { terms } = frame;
  if (!means(terms[verb], 'add') || means(terms[verb], 'set', 'took')) return false;
  // `bench needed 3 l, gave it that`.
  if (tellsAmount(frame, clause)) return false;
  const rest = inClause(frame, clause, (_, i) => i !== verb && !frame.timed[i]);
  if (!rest.every((i) => terms[i]!.kind === 'name' || isOfReference(terms[i]!))) return false;
  const names = namesIn(frame, clause);
  const pronouns = rest.filter((i) => means(terms[i], 'pronoun'));
  const isIt = terms[verb]!.text.includes(' ');
  const isOpen = rest.some((i) => means(terms[i], 'as-ever', 'same', 'that-one', 'vessel'));
  // `got it`: only that it was understood.
  const isLed =
    !means(terms[verb], 'outcome') || rest.some((i) => i < verb && isRecipient(terms[i]!));
  const recipients = names.length + (isIt ? 1 : 0);
  if (!isLed) return false;
  return recipients > 0 ? isOpen || pronouns.length > 0 : pronouns.length > 1;
}

function isRecipient(term: Term): boolean {
  return term.kind === 'name' || means(term, 'pronoun');
}

function isOfReference(term: Term): boolean {
  return means(
    term,
    'pronoun',
    'as-ever',
    'same',
    'that-one',
    'of-its-own',
    'vessel',
    'article',
    'filler',
    'self',
    'has',
    'all',
    'both',
    'each',
    'as-told',
  );
}

/** `poured into the jars`, `hab gegossen in den Gläsern`: nothing but a verb of adding, and where. */
function isPouredSomewhere(frame: Frame, clause: Clause, verb: number): boolean {
  if (means(frame.terms[verb], 'link', 'took', 'set', 'filler')) return false;
  const rest = inClause(
    frame,
    clause,
    (term, i) =>
      i !== verb &&
      !frame.timed[i] &&
      term.kind !== 'name' &&
      !means(term, 'self', 'filler', 'pronoun', 'has', 'place', 'article'),
  );
  const name = namesIn(frame, clause)[0];
  // `12 l not into the dwc but poured into the gutters`: the amount stands in another clause.
  if (tellsAmount(frame, clause)) return false;
  if (rest.length > 0 || name === undefined) return false;
  const before = means(frame.terms[name - 1], 'article') ? name - 2 : name - 1;
  return before >= clause.from && means(frame.terms[before], 'place');
}

/** Whether the sentence tells an amount that was poured, in whichever of its clauses. */
function tellsAmount(frame: Frame, { sentence }: Clause): boolean {
  const told = frame.sentences[sentence]!.filter((other) => !isReadInVessel(frame, other));
  return told.some(({ from, to }) => frame.places.hasWhere(isVolumeTerm, from, to));
}

function hasOtherObject(frame: Frame, clause: Clause, verb: number): boolean {
  return inClause(frame, clause, (term, i) => i > verb && isUnknown(term)).length > 0;
}

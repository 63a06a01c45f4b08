import { type Clause, type Frame, isMeasure, type TermRange } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { isDeed, isPlainDeed } from './clause-kinds.ts';

/**
 * `instead of the 12 l you wanted I gave the bench 2 cans`: the words that tell what was wished for and not done.
 * Null: nothing is given up, or nobody is said to have wished for it.
 */
export function wishGivenUp(frame: Frame, { from, to }: Clause): TermRange | null {
  const { terms, places } = frame;
  if (!places.has('instead-of', from, to)) return null;
  const lead = places.nextWhere(isInsteadOf, from);
  let amount = lead + 1;
  while (means(terms[amount], 'article', 'about')) amount++;
  if (amount >= to || !isMeasure(terms[amount])) return null;
  let end = amount + 1;
  while (end < to && !tellsAgain(frame, end)) end++;
  const isWished = terms
    .slice(amount + 1, end)
    .some((term) => means(term, 'target', 'intention', 'says', 'orders'));
  return isWished ? { from: lead, to: end } : null;
}

/** The clause without those words: what its moods are then of. */
export function besideWish(clause: Clause, wish: TermRange | null): Clause {
  if (wish === null) return clause;
  return wish.from === clause.from ? { ...clause, from: wish.to } : { ...clause, to: wish.from };
}

function isInsteadOf(term: Term): boolean {
  return means(term, 'instead-of') && !means(term, 'link', 'did-not');
}

/** `I gave`, `the bench`, `10 l`: where what was done is told. */
function tellsAgain({ terms }: Frame, i: number): boolean {
  const [term, after] = [terms[i], terms[i + 1]];
  if (term?.kind === 'name' || isMeasure(term)) return true;
  if (means(term, 'article')) return after?.kind === 'name';
  return means(term, 'self') && isDeed(after) && !isPlainDeed(after);
}

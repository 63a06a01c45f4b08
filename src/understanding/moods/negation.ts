import { type Clause, clauseHas, clauseToldBefore, type Frame, nextIn } from '../reading/frame.ts';
import { isCrop, isUnknown, means } from '../reading/term.ts';
import {
  couldNotAt,
  hasPastDeed,
  isDeed,
  isLabel,
  leansOnPrevious,
  tellsOfItsOwn,
} from './clause-kinds.ts';
import { hasProduct, type Marker } from './hearsay.ts';
import { noFlowAt, noWaterAt } from './no-water.ts';
import { notBroughtTo } from './not-brought-to.ts';
import { notDoneAt } from './not-done.ts';

/**
 * The clauses after this one that go on in the same breath and say nothing of their own. `isMarked`: those that
 * are coloured by a word of their own, and need no other to reach them.
 */
export function reach(
  frame: Frame,
  c: number,
  acrossCommas: boolean,
  isMarked: (clause: Clause) => boolean,
): number {
  const { clauses } = frame;
  let last = c;
  while (last + 1 < clauses.length) {
    const next = clauses[last + 1]!;
    const goesOn = next.opens === 'and' || (acrossCommas && next.opens === 'comma');
    if (!goesOn || isMarked(next)) break;
    if (!leansOnPrevious(frame, next) || opensWithDid(frame, next)) break;
    if (tellsOfItsOwn(frame, next, clauses[c]!)) break;
    last++;
  }
  return clauses[last]!.to;
}

/** `need to put 10 l in the bench, did the jars`: what has been done of another. */
function opensWithDid({ terms }: Frame, { from }: Clause): boolean {
  if (!means(terms[from], 'did') || means(terms[from], 'did-not')) return false;
  return terms[means(terms[from + 1], 'article') ? from + 2 : from + 1]?.kind === 'name';
}

export function negate(frame: Frame, clause: Clause, c: number, mark: Marker): void {
  const unreached = notBroughtTo(frame, clause);
  if (unreached !== null) mark(clause.from, unreached + 1, 'negation');
  const tells =
    (unreached === null ? couldNotAt(frame, clause) : null) ??
    noWaterAt(frame, clause) ??
    noFlowAt(frame, clause) ??
    notDoneAt(frame, clause);
  if (tells !== null) return;
  const isDenied = (other: Clause) => clauseHas(frame, other, 'did-not', 'no-outage');
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i];
    // `nearly put 30 l in`: it was not done; `nearly 30 l put in` was.
    if (means(term, 'almost') && hasPastDeed(frame, i + 1, Math.min(i + 2, clause.to))) {
      mark(clause.from, reach(frame, c, false, isDenied), 'negation');
      return;
    }
    if (means(term, 'almost') && hasPastDeed(frame, i + 1, clause.to)) {
      // `um ein Haar 20 ml gekippt` was not done; `beinahe 20 ml gekippt` may have been.
      const isAmount = means(frame.terms[i - 1], 'with', 'to', 'from', 'at', 'link');
      if (!means(term, 'about')) mark(clause.from, clause.to, 'negation');
      else if (means(term, 'about-or-almost') && !isAmount) mark(clause.from, clause.to, 'queried');
    }
    if (!means(term, 'did-not', 'not', 'no', 'no-outage')) continue;
    const poured = pouredNot(frame, clause, i);
    if (poured !== null) {
      mark(poured, clause.to, 'negation');
      return;
    }
    const next = nextIn(
      frame,
      clause,
      i,
      (other) =>
        (means(other, 'filler', 'article', 'another', 'self') ||
          (means(term, 'no') && (isCrop(other) || isUnknown(other)))) &&
        !isDeed(other),
    );
    const deed = next >= 0 && isDeed(frame.terms[next]);
    const product = next >= 0 && (means(frame.terms[next], 'solution') || hasProduct(frame, next));
    if (
      means(term, 'did-not', 'no-outage') ||
      (means(term, 'not') && deed) ||
      (means(term, 'no') && (deed || product))
    ) {
      const alone = !hasPastDeed(frame, clause.from, i) && !hasLabel(frame, clause.from, i);
      mark(alone ? clause.from : i, reach(frame, c, false, isDenied), 'negation');
      return;
    }
    // `ph not ok: bench 6.9` judges what is read.
    const judges = means(frame.terms[i + 1], 'judged', 'all-good');
    if (means(term, 'not') && next >= 0 && !judges) mark(i, clause.to, 'negation');
    const isLast = nextIn(frame, clause, i, () => false) < 0;
    // `topped up I have not`: at the end it denies the deed that opens its clause.
    if (means(term, 'not') && isLast && isDeed(frame.terms[clause.from])) {
      mark(clause.from, clause.to, 'negation');
      return;
    }
  }
}

function hasLabel(frame: Frame, from: number, to: number): boolean {
  return frame.places.hasWhere(isLabel, from, to);
}

/**
 * `filled a can for the gutters, not poured in yet`: where what was filled did not go in; from where that was told.
 * Null: it says something of its own.
 */
function pouredNot(frame: Frame, clause: Clause, i: number): number | null {
  const after = frame.terms.slice(i + 1, clause.to);
  const isDenied =
    after.some((term) => means(term, 'add', 'goes-in') && !means(term, 'place')) &&
    after.every((term) => means(term, 'add', 'goes-in', 'filler', 'pronoun', 'place', 'not'));
  if (!isDenied) return null;
  const isFilled = (range: Pick<Clause, 'from' | 'to'>) =>
    clauseHas(frame, range, 'fill', 'measure-full');
  if (isFilled({ from: clause.from, to: i })) return clause.from;
  const before = clauseToldBefore(frame, clause);
  const isBare = frame.terms
    .slice(clause.from, i)
    .every((term) => means(term, 'filler', 'pronoun', 'self', 'link'));
  return isBare && before?.sentence === clause.sentence && isFilled(before) ? before.from : null;
}

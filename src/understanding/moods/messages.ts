import { type Clause, clauseHas, type Frame, isMeasure, isName } from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';
import { hasPastDeed, isDeed, isLabel, isPlainDeed } from './clause-kinds.ts';

/** What a message to somebody says is to be done, and whether it may have been done all the same. */
interface Told {
  readonly from: number;
  readonly isInDoubt: boolean;
}

/**
 * `left Olli a note to put 5 l in the jars`, `wrote on the board to add A`, `list for Olli: 5 l in the jars`: what
 * somebody is asked to do by a message. A reading in it, and a deed that can only be one's own, are news as ever.
 */
export function toldInMessage(frame: Frame, clause: Clause): Told | null {
  const at = frame.places.within(isMessage, clause.from, clause.to)[0];
  if (at === undefined) return null;
  const lead = leadIn(frame, clause, at);
  if (lead === null) return null;
  const isToBeDone = means(frame.terms[lead], 'to');
  if (frame.places.hasWhere(isLabel, lead, clause.to)) return null;
  // `note: the bench is leaking`: nothing is to be done in it, and it may be news.
  if (!frame.places.hasWhere(isWork, lead, clause.to)) return null;
  if (!isToBeDone && hasOwnDeed(frame, lead, clause.to)) return null;
  // `list for today: bench 2 cans` may tell what was given.
  const isOrder =
    frame.terms[lead]?.kind !== 'mark' ||
    frame.places.hasWhere(isDeed, lead, clause.to) ||
    clauseHas(frame, clause, 'member', 'third-person', 'another-person', 'hearsay');
  return { from: lead, isInDoubt: !isOrder || saysDone(frame, clause) };
}

/**
 * `Zettel hingelegt, 5 l in die Wanne zu kippen`, `told her, that he puts 5 l in`: the clause after the comma, where
 * the one before says that somebody was told and holds no amount.
 */
export function toldAfterComma(frame: Frame, clause: Clause): Told | null {
  const before = frame.clauses[frame.clauseOf[clause.from]! - 1];
  if (clause.opens !== 'comma' || before?.sentence !== clause.sentence) return null;
  const isTold =
    frame.places.hasWhere(isMessage, before.from, before.to) || clauseHas(frame, before, 'orders');
  if (!isTold || frame.places.hasWhere(isMeasure, before.from, before.to)) return null;
  if (clauseHas(frame, clause, 'self', 'has')) return null;
  const isInfinitive = isDeed(frame.terms[clause.to - 1]) && endsToBeDone(frame, clause);
  const isThat = means(frame.terms[clause.from], 'that-clause');
  if (!isInfinitive && !isThat) return null;
  return { from: clause.from, isInDoubt: false };
}

/** `… and I did`, `…, so I put it in`, `…, erledigt`, `…. done`: after what one was asked to do. */
export function saysDone(frame: Frame, clause: Clause): boolean {
  const next = frame.clauses[frame.clauseOf[clause.from]! + 1];
  if (!next) return false;
  const isAnew = next.sentence !== clause.sentence;
  if (isAnew && frame.places.hasWhere(isMoreThanDone, next.from, next.to)) return false;
  if (clauseHas(frame, next, 'not', 'did-not', 'third-person', 'member')) return false;
  // `…, did the jars`: that is of something else.
  if (frame.places.hasWhere(isName, next.from, next.to)) return false;
  // `…, but I did only 8`: how much it was in truth.
  if (frame.places.hasWhere(isMeasure, next.from, next.to)) return false;
  return clauseHas(frame, next, 'did', 'done') || putsItIn(frame, next);
}

/** Anything that a sentence that says no more than `done` does not hold. */
function isMoreThanDone(term: Term): boolean {
  return (
    term.kind !== 'mark' &&
    !means(term, 'done', 'did', 'tick', 'self', 'pronoun', 'filler', 'thanks', 'just-now', 'now')
  );
}

/** `so I put it in`, `so I have`: a deed of one's own, of an amount that was told before. */
function putsItIn(frame: Frame, clause: Clause): boolean {
  if (frame.places.hasWhere(isMeasure, clause.from, clause.to)) return false;
  if (!means(frame.terms[clause.from], 'self') || clauseHas(frame, clause, 'intention'))
    return false;
  // `so I have`.
  const isAlone = clause.to - clause.from === 1;
  return isAlone || hasPastDeed(frame, clause.from, clause.to);
}

/**
 * `told Olli to check the pump and put 5 l in the jars`: that may have been asked for, or done; the index after it.
 * Null: what follows can only be one's own.
 */
export function perhapsTold(frame: Frame, to: number): number | null {
  const next = frame.clauses[(frame.clauseOf[to] ?? frame.clauses.length) + 1];
  if (!next || !['and', 'then', 'comma'].includes(next.opens)) return null;
  const first = next.from === next.to ? frame.clauses[frame.clauseOf[next.from]! + 1] : next;
  if (!first) return null;
  let i = first.from;
  while (i < first.to && means(frame.terms[i], 'filler', 'then')) i++;
  const isOrder = means(frame.terms[i], 'may-be-order', 'add-plainly', 'plain-deed');
  return isOrder ? first.to : null;
}

export function isMessage(term: Term): boolean {
  return means(term, 'message');
}

/** Something to do, or how much of it. */
function isWork(term: Term): boolean {
  return isDeed(term) || isMeasure(term);
}

/** Where what the message says begins: with `to` and a deed, a colon, or `saying`. */
function leadIn(frame: Frame, clause: Clause, at: number): number | null {
  for (let i = at; i < clause.to; i++) {
    const term = frame.terms[i];
    if (term?.kind === 'measure') return null;
    if (isMark(term, ':', '-', '"') || means(term, 'message-says')) return i;
    if (means(term, 'to') && isDeed(frame.terms[afterFillers(frame, clause, i)])) return i;
  }
  return null;
}

function afterFillers(frame: Frame, clause: Clause, i: number): number {
  let deed = i + 1;
  while (deed < clause.to && means(frame.terms[deed], 'filler') && !isDeed(frame.terms[deed]))
    deed++;
  return deed;
}

/** `topped up`, `added`; but neither `top up` nor `put`, which an order says as well. */
function hasOwnDeed(frame: Frame, from: number, to: number): boolean {
  if (!hasPastDeed(frame, from, to)) return false;
  for (let i = from; i < to; i++) {
    const term = frame.terms[i];
    if (isDeed(term) && !isPlainDeed(term) && !means(term, 'may-be-order', 'add-plainly'))
      return true;
  }
  return false;
}

/** `5 l in die Wanne zu kippen`, `5 l in die Wanne nachzufüllen`. */
function endsToBeDone(frame: Frame, clause: Clause): boolean {
  const last = frame.terms[clause.to - 1];
  return means(frame.terms[clause.to - 2], 'to', 'place') || means(last, 'plain-deed');
}

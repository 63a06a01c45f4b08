import { isDeed, isLabel } from '../moods/clause-kinds.ts';
import { type Clause, type Frame, isMeasure } from '../reading/frame.ts';
import { isUnknown, means, type Term } from '../reading/term.ts';
import { isOutageSentence } from './ago.ts';

/** `at 8`: a number after such a word is an hour unless a quantity or a name stands before it. */
export function asksForClock(frame: Frame, i: number): boolean {
  // `since around 6`: what is said before the word that blurs it.
  const isBlurred =
    means(frame.terms[i - 1], 'about') && means(frame.terms[i - 2], 'at-hour', 'since');
  const at = isBlurred ? i - 2 : i - 1;
  const before = frame.terms[at];
  // `from 2 to 4`: the end of a time that began.
  if (means(before, 'until') && frame.taken[i - 2] === true && !means(before, 'at-hour'))
    return true;
  if (means(before, 'from') && leadsToAmount(frame, i)) return false;
  if (means(before, 'from') && isOutageSentence(frame, i)) return true;
  if (!means(before, 'at-hour')) return false;
  if (isSaidOfWhatWasTold(frame, at, i)) return true;
  if (means(before, 'since') && !means(before, 'from')) return true;
  const after = frame.terms[i + 1];
  if (after?.kind === 'measure' && frame.terms[i + 1]!.glued) return false;
  const clause = frame.clauses[frame.clauseOf[i]!]!;
  if (after?.kind === 'mark' && (after.text === '/' || after.text === '-')) return false;
  const subject = at > clause.from ? frame.terms[at - 1] : undefined;
  // `went in at 8`: what was added is no amount at an amount.
  if (means(before, 'at') && means(subject, 'add') && !means(subject, 'link')) return true;
  if (means(before, 'at') && means(subject, 'put-back-in')) return true;
  if (isLabel(subject)) return false;
  if (means(before, 'at') && isFedAt(frame, clause, i)) return true;
  // `all at 20 degrees except the jars at 22`: a value, as that of the others.
  if (subject?.kind === 'name' && isValueOfLeftOut(frame, clause, at)) return false;
  // `was at 5.4`, but `was at 3 out`, `war um 3 weg`.
  if (means(subject, 'was', 'now')) return saysOutage(frame, i, clause.to);
  const otherNumbers =
    frame.places.hasWhere(isMeasure, clause.from, i) ||
    frame.places.hasWhere(isMeasure, i + 1, clause.to);
  if (means(before, 'at') && putsAnything(frame, clause, at)) return true;
  if (subject?.kind === 'name' && !otherNumbers)
    return (
      !(means(before, 'with') && saysAdding(frame, clause.from, i)) &&
      (saysDeed(frame, clause.from, i) || saysOutage(frame, i, clause.to))
    );
  // `around 7 12 l …`: of two numbers side by side the second is the amount.
  if (means(before, 'about') && i - 1 === clause.from && isMeasure(after) && after.measure.unit)
    return true;
  // `around 8` is a time only where the amount has been told.
  if (means(before, 'about'))
    return (
      frame.places.hasWhere(isMeasure, clause.from, i) ||
      (i - 1 === clause.from && otherNumbers && leadsDeed(frame, clause, i))
    );
  if (isAllButEmpty(frame, clause, i)) return true;
  // `topped up the buckets by 15` tells how much.
  if (means(before, 'with') && !otherNumbers && saysAdding(frame, clause.from, i)) return false;
  if (means(before, 'beyond', 'place')) return otherNumbers || saysDeed(frame, clause.from, i);
  if (means(before, 'link')) return otherNumbers || saysDeed(frame, clause.from, i);
  return true;
}

/** `…, that was at seven`, `…, thats from 7`: a clause of its own that says no more than when. */
function isSaidOfWhatWasTold({ terms, clauses, clauseOf }: Frame, at: number, i: number): boolean {
  const clause = clauses[clauseOf[i]!]!;
  if (clause.from === 0 || i + 1 < clause.to || at === clause.from) return false;
  for (let j = clause.from; j < at; j++)
    if (!means(terms[j], 'that-one', 'was', 'meant', 'pronoun', 'link', 'filler')) return false;
  return means(terms[clause.from], 'that-one', 'meant', 'pronoun');
}

function isValueOfLeftOut({ places }: Frame, { from }: Clause, at: number): boolean {
  return (
    places.has('except', from, at) &&
    places.hasWhere(isMeasure, from, at) &&
    places.hasWhere(isLabel, from, at)
  );
}

/** `power tripped 6.50, back on 7.10`: a number of hours and minutes behind what failed or came back. */
export function isClockOfOutage(frame: Frame, i: number): boolean {
  const clause = frame.clauses[frame.clauseOf[i]!]!;
  const [state, after] = [frame.terms[i - 1], frame.terms[i + 1]];
  if (i - 1 < clause.from || isLabel(after) || isMeasure(after)) return false;
  return (
    means(state, 'broken', 'working', 'no-power', 'again', 'until') && isOutageSentence(frame, i)
  );
}

/** `…, all at 8`: nothing but the time in a clause that follows another. */
function isAllButEmpty(frame: Frame, clause: Clause, i: number): boolean {
  // `at 7`, and no more: what somebody answers.
  if (clause.from === 0) return frame.terms.length === 2 && means(frame.terms[0], 'at');
  for (let j = clause.from; j < clause.to; j++) {
    if (
      j !== i &&
      !means(frame.terms[j], 'filler', 'all', 'both', 'at', 'at-hour', 'place', 'article')
    )
      return false;
  }
  return true;
}

/** `around 7 topped up the jars`, `around 7 jars ph 6`: a verb or a name follows straight. */
function leadsDeed(frame: Frame, clause: Clause, i: number): boolean {
  let j = i + 1;
  while (means(frame.terms[j], 'self', 'filler', 'article', 'ish') && !isDeed(frame.terms[j])) j++;
  return j < clause.to && (isDeed(frame.terms[j]) || frame.terms[j]?.kind === 'name');
}

/** `fed the bench at 7`, `fed the cat at 7`: the one number of a clause is no amount behind `at`; `put it at 10` sets. */
function isFedAt(frame: Frame, clause: Clause, i: number): boolean {
  if (frame.places.hasWhere(isLabel, clause.from, clause.to)) return false;
  const isOtherNumber =
    frame.places.hasWhere(isMeasure, clause.from, i) ||
    frame.places.hasWhere(isMeasure, i + 1, clause.to);
  return !isOtherNumber && frame.places.hasWhere(isPlainGiving, clause.from, i);
}

function isPlainGiving(term: Term): boolean {
  return means(term, 'add') && !means(term, 'set', 'link', 'place', 'has');
}

/** `put the lid on the dwc at 7`: something that is no water. */
function putsAnything({ terms, places }: Frame, clause: Clause, to: number): boolean {
  const verb = places.nextWhere(isPutting, clause.from);
  if (verb >= to) return false;
  const object = means(terms[verb + 1], 'article') ? verb + 2 : verb + 1;
  return object < to && isUnknown(terms[object]);
}

function isPutting(term: Term): boolean {
  return means(term, 'set');
}

/** `fell from 8 to 7 mg/l`: a value, as the one it leads to. */
function leadsToAmount({ terms }: Frame, i: number): boolean {
  const to = terms[i + 2];
  return means(terms[i + 1], 'to', 'until') && isMeasure(to) && to.measure.unit !== null;
}

function saysAdding(frame: Frame, from: number, to: number): boolean {
  return frame.terms.slice(from, to).some((term) => means(term, 'top-up', 'add', 'fill'));
}
const deeds = [
  'top-up',
  'change',
  'changed-solution',
  'calibrate',
  'broken',
  'working',
  'no-power',
  'pick',
  'did',
  'fill',
  'done',
  'other-deed',
] as const;

/** What failed or came back has a time and no amount. */
function saysOutage(frame: Frame, from: number, to: number): boolean {
  return (['broken', 'working', 'no-power'] as const).some((state) =>
    frame.places.has(state, from, to),
  );
}

function saysDeed(frame: Frame, from: number, to: number): boolean {
  return deeds.some((deed) => frame.places.has(deed, from, to));
}

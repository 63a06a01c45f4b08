import {
  type Clause,
  clauseHas,
  type Frame,
  isPadding,
  nextIn,
  previousIn,
} from '../reading/frame.ts';
import { isMark, isUnknown, means } from '../reading/term.ts';
import type { TimeMark } from '../times/time-mark.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { couldNotAt, hasPastDeed, isDeed, isLabel, leansOnPrevious } from './clause-kinds.ts';
import type { Mood } from './mood.ts';
import { findQuestions } from './questions.ts';

/** The mood of every term; null where something is plainly said. */
export function moodsOf(frame: Frame, marks: readonly TimeMark[]): readonly (Mood | null)[] {
  const moods: (Mood | null)[] = frame.terms.map(() => null);
  const mark = (from: number, to: number, mood: Mood) => {
    for (let i = from; i < to; i++) moods[i] ??= mood;
  };
  for (const { from, to, mood } of findQuestions(frame)) mark(from, to, mood);
  frame.clauses.forEach((clause, c) => {
    negate(frame, clause, c, mark);
    intend(frame, clause, c, mark);
    suppose(frame, clause, mark);
    hear(frame, clause, mark);
    for (const [concept, mood] of wholeClause) {
      if (clauseHas(frame, clause, concept)) mark(clause.from, clause.to, mood);
    }
    remember(frame, clause, c, mark);
    elsewhere(frame, clause, mark);
    if (
      marks.some((time) => time.clause === c && time.askFrom !== null && !time.since) &&
      isToBeDone(frame, clause)
    ) {
      mark(clause.from, clause.to, 'intention');
    }
  });
  return moods;
}

/** `top up the bench tonight`: the deed as something to do, and a time to come. */
function isToBeDone(frame: Frame, clause: Clause): boolean {
  return clauseHas(frame, clause, 'plain-deed') && !hasPastDeed(frame, clause.from, clause.to);
}

type Marker = (from: number, to: number, mood: Mood) => void;

const wholeClause: readonly (readonly [Concept, Mood])[] = [
  ['target', 'target'],
  ['habit', 'hearsay'],
  ['forecast', 'not-a-reading'],
  ['money', 'not-a-reading'],
  ['phone', 'not-a-reading'],
];

/** The clauses after this one that go on in the same breath and say nothing of their own. */
function reach(frame: Frame, c: number, acrossCommas: boolean): number {
  const { clauses } = frame;
  let last = c;
  while (last + 1 < clauses.length) {
    const next = clauses[last + 1]!;
    const goesOn = next.opens === 'and' || (acrossCommas && next.opens === 'comma');
    if (!goesOn || !leansOnPrevious(frame, next)) break;
    last++;
  }
  return clauses[last]!.to;
}

function negate(frame: Frame, clause: Clause, c: number, mark: Marker): void {
  if (couldNotAt(frame, clause) !== null) return;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i];
    if (!means(term, 'did-not', 'not', 'no')) continue;
    const next = nextIn(
      frame,
      clause,
      i,
      (other) => means(other, 'filler', 'article', 'another', 'self') && !isDeed(other),
    );
    const deed = next >= 0 && isDeed(frame.terms[next]);
    const product = next >= 0 && (means(frame.terms[next], 'solution') || hasProduct(frame, next));
    if (
      means(term, 'did-not') ||
      (means(term, 'not') && deed) ||
      (means(term, 'no') && (deed || product))
    ) {
      const alone = !hasPastDeed(frame, clause.from, i) && !hasLabel(frame, clause.from, i);
      mark(alone ? clause.from : i, reach(frame, c, false), 'negation');
      return;
    }
    if (means(term, 'not') && next >= 0) mark(i, clause.to, 'negation');
  }
}

function hasProductIn(frame: Frame, clause: Clause): boolean {
  for (let i = clause.from; i < clause.to; i++) if (hasProduct(frame, i)) return true;
  return false;
}

function hasProduct(frame: Frame, i: number): boolean {
  const term = frame.terms[i];
  return term?.kind === 'word' && (term.word.product !== null || term.word.anyProduct);
}

function hasLabel(frame: Frame, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (isLabel(frame.terms[i])) return true;
  return false;
}

function intend(frame: Frame, clause: Clause, c: number, mark: Marker): void {
  if (clauseHas(frame, clause, 'to-say')) return;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i];
    if (!means(term, 'intention', 'tomorrow') || isDate(frame, i) || means(term, 'brim')) continue;
    const done = hasPastDeed(frame, clause.from, i) && !means(frame.terms[i - 1], 'was');
    mark(done ? i : clause.from, reach(frame, c, true), 'intention');
    return;
  }
}

/** `3 May`, `May 3rd`: a month, not a possibility. */
function isDate(frame: Frame, i: number): boolean {
  const term = frame.terms[i];
  if (term?.kind !== 'word' || term.word.month === null) return false;
  return (
    frame.terms[i - 1]?.kind === 'measure' ||
    frame.terms[i + 1]?.kind === 'measure' ||
    means(frame.terms[i - 1], 'of')
  );
}

function suppose(frame: Frame, clause: Clause, mark: Marker): void {
  if (!clauseHas(frame, clause, 'condition')) return;
  const end = frame.clauses.findLast(({ sentence }) => sentence === clause.sentence)!.to;
  mark(clause.from, end, 'condition');
}

function hear(frame: Frame, clause: Clause, mark: Marker): void {
  const end = () => frame.clauses.findLast(({ sentence }) => sentence === clause.sentence)!.to;
  if (clauseHas(frame, clause, 'hearsay')) mark(clause.from, end(), 'hearsay');
  if (clauseHas(frame, clause, 'long-ago')) mark(clause.from, clause.to, 'hearsay');
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i];
    if (means(term, 'extreme') && !leadsToMark(frame, i))
      mark(clause.from, clause.to, 'not-a-reading');
    if (means(term, 'says') && saidBySomebody(frame, clause, i))
      mark(clause.from, end(), 'hearsay');
    if (means(term, 'member', 'third-person') && i === clause.from && isSubject(frame, clause, i))
      mark(clause.from, clause.to, 'others');
  }
}

/** `to the max` is a mark on the reservoir; `the maximum was 34` is the weather's. */
function leadsToMark(frame: Frame, i: number): boolean {
  const before = frame.terms[i - 1];
  return (
    means(before, 'to', 'below') ||
    (means(before, 'article') && means(frame.terms[i - 2], 'to', 'below'))
  );
}

/** What was drunk, lost or thrown away, and what was read in other water than a system's. */
function elsewhere(frame: Frame, clause: Clause, mark: Marker): void {
  const isTaken =
    clauseHas(frame, clause, 'take-away') &&
    !clauseHas(
      frame,
      clause,
      'top-up',
      'add',
      'fill',
      'changed-solution',
      'pick',
      'left-over',
      'level',
    );
  if (isTaken && !hasProductIn(frame, clause)) mark(clause.from, clause.to, 'not-a-reading');
  for (let i = clause.from; i < clause.to; i++) {
    if (!means(frame.terms[i], 'other-water') || hasPastDeed(frame, clause.from, clause.to))
      continue;
    const before = previousIn(frame, clause, i, (term) => means(term, 'article'));
    const isOrigin = before >= 0 && means(frame.terms[before], 'with', 'from', 'after');
    const named = frame.terms.slice(clause.from, i).some(({ kind }) => kind === 'name');
    if (!isOrigin && !named) mark(clause.from, clause.to, 'not-a-reading');
  }
}

/** `the shop says`, not `the pen says`. */
function saidBySomebody(frame: Frame, clause: Clause, i: number): boolean {
  const subject = previousIn(
    frame,
    clause,
    i,
    (term) => means(term, 'article', 'filler', 'now') && !means(term, 'pronoun'),
  );
  if (subject < 0) return false;
  const term = frame.terms[subject];
  return isUnknown(term) || means(term, 'member', 'third-person', 'hearsay', 'self');
}

function isSubject(frame: Frame, clause: Clause, i: number): boolean {
  const term = frame.terms[i];
  const sender = frame.context.member;
  if (term && [sender.handle.toLowerCase(), sender.name.toLowerCase()].includes(term.text))
    return false;
  const next = nextIn(frame, clause, i, (other) => isPadding(other) && !isMark(other, ':'));
  if (next >= 0 && (isDeed(frame.terms[next]) || means(frame.terms[next], 'did', 'says')))
    return true;
  // `Jonas hat 10 l in die Wanne gekippt`: the verb may end the clause.
  return means(frame.terms[i + 1], 'has') && isDeed(frame.terms[clause.to - 1]);
}

function remember(frame: Frame, clause: Clause, c: number, mark: Marker): void {
  if (clauseHas(frame, clause, 'to-say')) return;
  for (let i = clause.from; i < clause.to; i++) {
    if (means(frame.terms[i], 'forgot')) {
      mark(clause.from, reach(frame, c, false), 'forgotten');
      return;
    }
  }
}

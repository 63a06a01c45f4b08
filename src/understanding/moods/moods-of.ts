import { type Clause, clauseHas, type Frame } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import type { TimeMark } from '../times/time-mark.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { hasPastDeed, isDeed, isPlainDeed } from './clause-kinds.ts';
import { elsewhere, hear, type Marker } from './hearsay.ts';
import type { Mood } from './mood.ts';
import { negate, reach } from './negation.ts';
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

const wholeClause: readonly (readonly [Concept, Mood])[] = [
  ['target', 'target'],
  ['habit', 'hearsay'],
  ['forecast', 'not-a-reading'],
  ['money', 'not-a-reading'],
  ['phone', 'not-a-reading'],
];

function intend(frame: Frame, clause: Clause, c: number, mark: Marker): void {
  if (clauseHas(frame, clause, 'to-say')) return;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i];
    if (isMorningGreeting(frame, clause, i)) continue;
    if (!means(term, 'intention', 'tomorrow') || isDate(frame, i) || means(term, 'brim')) continue;
    const done = hasPastDeed(frame, clause.from, i) && !means(frame.terms[i - 1], 'was');
    const told = deedToldAfter(frame, clause, i);
    if (told === null) mark(done ? i : clause.from, reach(frame, c, true), 'intention');
    else mark(done ? i : clause.from, told, 'intention');
    return;
  }
}

/** `it needed 12 l so I topped it up`: where somebody tells what was done about it. */
function deedToldAfter(frame: Frame, clause: Clause, i: number): number | null {
  for (let j = i + 2; j < clause.to - 1; j++) {
    const told =
      means(frame.terms[j], 'self') &&
      isDeed(frame.terms[j + 1]) &&
      !isPlainDeed(frame.terms[j + 1]);
    if (told && !means(frame.terms[j], 'intention')) return j;
  }
  return null;
}

/** `Morgen, Wanne 5,8`: the word for tomorrow, alone before a comma, wishes a good morning. */
function isMorningGreeting(frame: Frame, clause: Clause, i: number): boolean {
  return (
    means(frame.terms[i], 'greeting') && clause.opens === 'start' && clause.to - clause.from === 1
  );
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

function remember(frame: Frame, clause: Clause, c: number, mark: Marker): void {
  if (clauseHas(frame, clause, 'to-say')) return;
  for (let i = clause.from; i < clause.to; i++) {
    if (means(frame.terms[i], 'forgot')) {
      mark(clause.from, reach(frame, c, false), 'forgotten');
      return;
    }
  }
}

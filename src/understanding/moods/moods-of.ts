import { localTimeOf } from '../../greenhouse/local-time.ts';
import { isBare, isVolume } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  isPadding,
  isVolumeTerm,
  measureOf,
  measuresIn,
} from '../reading/frame.ts';
import { isMark, isWeekday, means, type Term } from '../reading/term.ts';
import { isMorningOfDay } from '../times/find-times.ts';
import type { TimeMark } from '../times/time-mark.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { hasPastDeed, isDeed, isLabel, isPlainDeed } from './clause-kinds.ts';
import { isEachTimeMeasured } from './each-time.ts';
import { elsewhere, endOfTalkOf, hear, type Marker } from './hearsay.ts';
import { saysDone } from './messages.ts';
import type { Mood } from './mood.ts';
import { negate, reach } from './negation.ts';
import { meanNext } from './next-to-do.ts';
import { noFlowAt } from './no-water.ts';
import { ofBatch } from './of-a-batch.ts';
import { ofVessel } from './of-a-vessel.ts';
import { outageToCome } from './outage-to-come.ts';
import { findQuestions } from './questions.ts';
import { doubtSwapped } from './swapped.ts';
import { besideWish, wishGivenUp } from './wish-given-up.ts';

/** The mood of every term; null where something is plainly said. */
export function moodsOf(frame: Frame, marks: readonly TimeMark[]): readonly (Mood | null)[] {
  const moods: (Mood | null)[] = frame.terms.map(() => null);
  // From a term that has a mood, a step towards the next that has none.
  const onwards = frame.terms.map((_, i) => i);
  const mark = (from: number, to: number, mood: Mood) => {
    let i = from;
    while (i < to) {
      const next = onwards[i]!;
      if (next === i) moods[i] ??= mood;
      onwards[i] = Math.max(to, next);
      i = Math.max(next, i + 1);
    }
  };
  for (const { from, to, mood } of findQuestions(frame)) mark(from, to, mood);
  frame.clauses.forEach((whole, c) => {
    const wish = wishGivenUp(frame, whole);
    if (wish) mark(wish.from, wish.to, 'target');
    const clause = besideWish(whole, wish);
    const toCome = outageToCome(frame, clause, marks);
    if (toCome !== null) mark(clause.from, clause.to, toCome);
    doubtSwapped(frame, clause, mark);
    negate(frame, clause, c, mark);
    intend(frame, clause, c, mark);
    meanNext(frame, clause, mark);
    suppose(frame, clause, mark);
    hear(frame, clause, mark);
    for (const [concept, mood] of wholeClause) {
      const isOther = concept === 'forecast' && noFlowAt(frame, clause) !== null;
      if (
        clauseHas(frame, clause, concept) &&
        !isOther &&
        !onlyJudges(frame, clause, concept) &&
        !(concept === 'habit' && isEachTimeMeasured(frame, clause))
      )
        mark(
          concept === 'target' ? askedTargetAt(frame, clause) : clause.from,
          outcomeAt(frame, clause) ?? clause.to,
          mood,
        );
    }
    remember(frame, clause, c, mark);
    elsewhere(frame, clause, mark);
    ofVessel(frame, clause, mark);
    ofBatch(frame, clause, mark);
    if (
      marks.some((time) => time.clause === c && mayBeToCome(frame, time)) &&
      isToBeDone(frame, clause)
    ) {
      mark(clause.from, clause.to, 'intention');
    }
  });
  return moods;
}

/** A time still to come, or a weekday of which nobody says that it was the last: `changing the jars on Friday`. */
function mayBeToCome(frame: Frame, { from, to, askFrom, since }: TimeMark): boolean {
  if (since) return false;
  return (
    askFrom !== null ||
    frame.terms
      .slice(from, to + 1)
      .some((term, n) => isWeekday(term) && !means(frame.terms[from + n - 1], 'last'))
  );
}

/** `top up the bench tonight`: the deed as something to do, and a time to come. */
function isToBeDone(frame: Frame, clause: Clause): boolean {
  return clauseHas(frame, clause, 'plain-deed') && !hasPastDeed(frame, clause.from, clause.to);
}

/** `should be fine: dwc ph 5.8`: an opinion, no target. */
function onlyJudges(frame: Frame, clause: Clause, concept: Concept): boolean {
  if (concept !== 'target') return false;
  const at = frame.terms.findIndex((term, i) => i >= clause.from && means(term, 'target'));
  return means(frame.terms[at + 1], 'judged') && frame.terms[at + 2]?.kind !== 'measure';
}

const wholeClause: readonly (readonly [Concept, Mood])[] = [
  ['target', 'target'],
  ['habit', 'hearsay'],
  ['forecast', 'not-a-reading'],
  ['money', 'not-a-reading'],
  ['phone', 'not-a-reading'],
  // Whether it was meant is asked.
  ['trial', 'queried'],
];

function intend(frame: Frame, clause: Clause, c: number, mark: Marker): void {
  const i = intentionAt(frame, clause);
  if (i === null) return;
  const done =
    (hasPastDeed(frame, clause.from, i) || tellsReading(frame, clause, i)) &&
    !means(frame.terms[i - 1], 'was');
  // `gestern vergessen die Gläser aufzufüllen: Tisch pH 6,1`: that is told, whatever was forgotten.
  const behindColon = clauseHas(frame, clause, 'forgot') ? toldAfterColon(frame, clause, i) : null;
  const told = deedToldAfter(frame, clause, i) ?? outcomeAt(frame, clause) ?? behindColon;
  const isMeant = (other: Clause) => intentionAt(frame, other) !== null;
  if (isObeyed(frame, clause, i)) return mark(clause.from, frame.clauses[c + 1]!.to, 'queried');
  const mood = mayBeOver(frame, clause, i) ? 'queried' : 'intention';
  mark(done ? i : clause.from, told ?? reach(frame, c, true, isMeant), mood);
}

/** `ich soll 10 l in den Tisch kippen, erledigt`: what was to be done, and that it was. */
function isObeyed(frame: Frame, clause: Clause, intention: number): boolean {
  const isOwed = frame.places.hasWhere(isVolumeTerm, intention, clause.to);
  return isOwed && saysDone(frame, clause);
}

/** Before that nobody tells what they did after lunch. */
const hourOfLunch = 12;

/** `another 300 g after lunch`, written in the afternoon: an amount, and no word of what is to be done. */
function mayBeOver(frame: Frame, clause: Clause, i: number): boolean {
  if (!means(frame.terms[i], 'part-of-day') || measuresIn(frame, clause).length === 0) return false;
  const { writtenAtMs, greenhouse } = frame.context;
  if (localTimeOf(writtenAtMs, greenhouse.timeZone).hour < hourOfLunch) return false;
  return !frame.terms
    .slice(clause.from, clause.to)
    .some((term, n) => isPlainDeed(term) || (clause.from + n !== i && means(term, 'intention')));
}

/** `gutters 1.9 ec, whats the target`: where it is only asked what is wanted, behind what was read. */
function askedTargetAt(frame: Frame, clause: Clause): number {
  const target = frame.terms.findIndex((term, i) => i >= clause.from && means(term, 'target'));
  let what = target - 1;
  while (what > clause.from && means(frame.terms[what], 'article', 'link', 'filler', 'pronoun'))
    what--;
  const [last] = measuresIn(frame, { ...clause, from: Math.max(what, clause.from) });
  return what > clause.from && means(frame.terms[what], 'what') && last === undefined
    ? what
    : clause.from;
}

/** `wanted 1.8 got 1.7 ec`: where, after the value aimed at, the one that it came to is told; null: it is not. */
function outcomeAt(frame: Frame, clause: Clause): number | null {
  const aim = frame.terms.findIndex(
    (term, i) => i >= clause.from && i < clause.to && means(term, 'target', 'intention'),
  );
  if (aim < 0) return null;
  const [wanted, got] = measuresIn(frame, clause).filter((i) => i > aim);
  if (wanted === undefined || got === undefined) return null;
  const at = isLabel(frame.terms[wanted + 1]) ? wanted + 2 : wanted + 1;
  const isDirect = frame.terms
    .slice(at + 1, got)
    .every((term) => isLabel(term) || means(term, 'link', 'article', 'filler', 'about', 'at'));
  return means(frame.terms[at], 'outcome') && isDirect ? at : null;
}

/** The first word of a clause that says that something is only meant to be done. */
function intentionAt(frame: Frame, clause: Clause): number | null {
  if (clauseHas(frame, clause, 'to-say')) return null;
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i];
    if (!means(term, 'intention', 'tomorrow') || means(term, 'brim')) continue;
    if (isMorningGreeting(frame, clause, i) || isMorningOfDay(frame, i)) continue;
    // `Tisch braucht 9 min zum Fluten` tells how long it takes.
    if (means(term, 'took') && clauseHas(frame, clause, 'flood')) continue;
    if (means(term, 'after') && tellsFigure(frame, clause)) continue;
    if (means(term, 'next-in-turn') && isReadNext(frame, clause, i)) continue;
    if (!tellsOfOwnDeed(frame, i) && !isDate(frame, i)) return i;
  }
  return null;
}

/** `next up bench: ph 6.1`, `next up, gutters 6.0 1.2`: what stood next on the walk, and that it was read. */
function isReadNext(frame: Frame, clause: Clause, i: number): boolean {
  const isAlone = i + 1 === clause.to || (i + 2 === clause.to && isMark(frame.terms[i + 1], ':'));
  const next = isAlone ? frame.clauses[frame.clauseOf[clause.from]! + 1] : clause;
  if (!next || !opensWithReading(frame, { ...next, from: Math.max(next.from, i + 1) }))
    return false;
  return !inClause(frame, next, isPlainDeed).length;
}

function opensWithReading(frame: Frame, clause: Clause): boolean {
  const [value] = measuresIn(frame, clause);
  if (value === undefined) return false;
  const lead = frame.terms.slice(clause.from, value);
  const isLabelled = isLabel(frame.terms[value - 1]) || isLabel(frame.terms[value + 1]);
  const isReading = isBare(measureOf(frame, value)) && measureOf(frame, value).decimals > 0;
  return (
    (isLabelled || isReading) &&
    lead.every((term) => term.kind === 'name' || isLabel(term) || isPadding(term)) &&
    // `next up bench to 6.1 ph`: what is wanted.
    !lead.some((term) => means(term, 'to'))
  );
}

/** `once I added a pail`: the phrase ends with who did it, and that was done. */
function tellsOfOwnDeed(frame: Frame, i: number): boolean {
  const [term, deed] = [frame.terms[i]!, frame.terms[i + 1]];
  const last = term.text.slice(term.text.lastIndexOf(' ') + 1);
  const isByOneself = frame.lexicon.own.phrases.get([last])?.concepts.has('self') === true;
  return isByOneself && last !== term.text && isDeed(deed) && !isPlainDeed(deed);
}

/** `ph 5.9 an hour later`, `later it's 5.9`: a figure was read, whenever that was. */
function tellsFigure(frame: Frame, clause: Clause): boolean {
  return measuresIn(frame, clause).some((i) => {
    const before = frame.terms[isMark(frame.terms[i - 1], ':') ? i - 2 : i - 1];
    return (
      isBare(measureOf(frame, i)) &&
      i > clause.from &&
      (isLabel(before) ||
        (means(before, 'after') && measureOf(frame, i).decimals > 0) ||
        (means(before, 'link') && !means(before, 'place')))
    );
  });
}

/** `dwc ph 5.8 will add 5 ml up`: a value with its label before what is meant to be done about it. */
function tellsReading(frame: Frame, clause: Clause, i: number): boolean {
  const before = frame.terms.slice(clause.from, i);
  return (
    before.some(isLabel) &&
    before.some(({ kind }) => kind === 'measure') &&
    frame.terms.slice(i + 1, clause.to).some(isPlainDeed)
  );
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
  const isSupposed = (other: Clause) => clauseHas(frame, other, 'condition');
  if (isSupposed(clause)) mark(clause.from, endOfTalkOf(frame, clause, isSupposed), 'condition');
}

function remember(frame: Frame, clause: Clause, c: number, mark: Marker): void {
  if (clauseHas(frame, clause, 'to-say')) return;
  for (let i = clause.from; i < clause.to; i++) {
    // `dem Tisch 3 Kannen verpasst`: with an amount it is another word for giving.
    if (means(frame.terms[i], 'forgot') && !isGiven(frame, clause, i)) {
      const told = toldAfterColon(frame, clause, i);
      const isForgotten = (other: Clause) => clauseHas(frame, other, 'forgot');
      if (told !== null && isOnlyForgotten(frame, clause, told)) return mark(i, i + 1, 'forgotten');
      const from = nameForgotten(frame, clause, i) ?? clause.from;
      mark(from, told ?? reach(frame, c, false, isForgotten), 'forgotten');
      return;
    }
  }
}

/** `tray 5.9 ph wall 6.1 tower forgot`: behind what was told of others, the last name alone was forgotten. */
function nameForgotten(frame: Frame, clause: Clause, i: number): number | null {
  let at = i - 1;
  while (at > clause.from && means(frame.terms[at], 'self', 'filler', 'link')) at--;
  const isBehindValues =
    frame.terms[at]?.kind === 'name' && measuresIn(frame, { ...clause, to: at }).length > 0;
  const isOfOthers = frame.terms.slice(clause.from, at).some(({ kind }) => kind === 'name');
  const isEnd = measuresIn(frame, { ...clause, from: i }).length === 0;
  return isBehindValues && isOfOthers && isEnd ? at : null;
}

function isGiven(frame: Frame, clause: Clause, i: number): boolean {
  const isAmount = (term: Term) => term.kind === 'measure' && isVolume(term.measure);
  return means(frame.terms[i], 'add') && frame.terms.slice(clause.from, clause.to).some(isAmount);
}

/** `hatte gestern vergessen: …`: nothing else is told of before the colon, and the time is that of what follows. */
function isOnlyForgotten(frame: Frame, clause: Clause, told: number): boolean {
  return (
    inClause(
      frame,
      { ...clause, to: told },
      (term) => (isDeed(term) || isLabel(term)) && !means(term, 'forgot'),
    ).length === 0
  );
}

/** `forgot: topped up the jars 3 l`, `forgot the jars: bench ph 6.1`: what was forgotten was to say it, or is another thing. */
function toldAfterColon(frame: Frame, clause: Clause, i: number): number | null {
  for (let j = i + 1; j < clause.to; j++) {
    if (!isMark(frame.terms[j], ':')) continue;
    const isReading =
      frame.places.hasWhere(isLabel, j, clause.to) &&
      frame.places.hasWhere(isMeasure, j, clause.to);
    return isReading || hasPastDeed(frame, j, clause.to) ? j : null;
  }
  return null;
}

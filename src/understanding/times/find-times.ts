import { type LocalDate, localDateOf, localTimeOf, plusDays } from '../../greenhouse/local-time.ts';
import { hasPastDeed } from '../moods/clause-kinds.ts';
import { type Frame, takeTime } from '../reading/frame.ts';
import { isWeekday, means, type Term } from '../reading/term.ts';
import { agoAt, isOutageSentence } from './ago.ts';
import { type Building, nothingSaid } from './building.ts';
import { clockAt } from './clock-said.ts';
import { dayAt } from './day-said.ts';
import { type DayPart, workOut } from './day-time.ts';
import { headsWhatFollows, isOfToday } from './head-day.ts';
import type { TimeMark } from './time-mark.ts';

/** A time, and the day that it names itself. */
interface Built {
  readonly mark: TimeMark;
  readonly day: LocalDate | null;
}

/** Every time that the message speaks of; their terms are taken. */
export function findTimes(frame: Frame): TimeMark[] {
  const marks: TimeMark[] = [];
  let headDay: LocalDate | null = null;
  let i = 0;
  while (i < frame.terms.length) {
    const ago = agoAt(frame, i);
    const built: Built | null = ago ? null : expressionAt(frame, i, headDay);
    const mark = ago ?? built?.mark;
    if (built && built.day !== null) headDay = built.mark.heads === true ? built.day : null;
    if (mark) {
      takeTime(frame, mark.from, mark.to + 1);
      if (!isHeldAgainst(frame, mark)) marks.push(mark);
      i = mark.to + 1;
    } else i++;
  }
  return marks;
}

/** `0.3 more than yesterday`, `5,8 wie gestern`, `the same as yesterday`: of another value, and not of what is told. */
function isHeldAgainst({ terms, clauses }: Frame, { from, clause }: TimeMark): boolean {
  const before = terms[from - 1];
  // `als gestern der Strom weg war`: at the front it tells when.
  if (means(before, 'compared', 'than')) return from - 1 > clauses[clause]!.from;
  if (means(before, 'beyond')) return !means(before, 'at-hour', 'place');
  return means(terms[from - 2], 'same') && means(before, 'link');
}

/** Day, part of day and clock time, in any order, with small words between. */
function expressionAt(frame: Frame, start: number, headDay: LocalDate | null): Built | null {
  const clause = frame.clauseOf[start]!;
  const building: Building = {
    said: nothingSaid,
    from: start,
    to: start - 1,
    since: false,
    until: false,
    earlier: false,
    headDay,
  };
  let found = false;
  let i = start;
  while (
    i < frame.terms.length &&
    frame.clauseOf[i] === clause &&
    frame.terms[i]!.kind !== 'stop'
  ) {
    const length = partAt(frame, i, building);
    if (length === 0) {
      // `since last night`: the word that says from when on, and the one that says which.
      if (!found && i > start && !means(frame.terms[start], 'since')) break;
      // `pump was off this morning`: what it was, and no small word of the time.
      if (!isSmall(frame.terms[i]) || means(frame.terms[i], 'broken')) break;
      i++;
      if (!found && i - start > 2) break;
      continue;
    }
    found = true;
    building.to = i + length - 1;
    i += length;
  }
  if (!found) return null;
  for (let j = start; j <= building.to; j++) {
    const begins =
      (means(frame.terms[j], 'since') && !means(frame.terms[j], 'from')) ||
      (means(frame.terms[j], 'from') && isOutageSentence(frame, j));
    if (begins) building.since = true;
    if (means(frame.terms[j], 'until') && !means(frame.terms[j], 'since')) building.until = true;
  }
  const ownDay = building.said.day;
  const heads = ownDay !== null && headsWhatFollows(frame, building);
  if (ownDay === null && headDay !== null && !isOfToday(frame, building))
    building.said = { ...building.said, day: headDay };
  const mark = finished(frame, building, clause);
  const vague = mark.vague || isAbout(frame, mark.from, mark.to);
  return { mark: { ...mark, vague, heads }, day: ownDay };
}

function finished(
  frame: Frame,
  { said, from, to, since, until, earlier }: Building,
  clause: number,
): TimeMark {
  const { writtenAtMs, greenhouse } = frame.context;
  const written = frame.folded.text.slice(frame.terms[from]!.from, frame.terms[to]!.to);
  const base = { from, to, clause, since, until, written, heads: false };
  if (earlier) return { atMs: writtenAtMs, vague: true, askFrom: null, ...base };
  const { atMs, vague, askFrom } = workOut(said, greenhouse, writtenAtMs);
  return { atMs, vague, askFrom, ...base };
}

/** `around 7`, `8ish`, `about lunchtime`: a clock time that is not said to the minute. */
function isAbout(frame: Frame, from: number, to: number): boolean {
  const around = [from - 1, ...frame.terms.slice(from, to + 1).map((_, n) => from + n), to + 1];
  return around.some((i) => {
    const term = frame.terms[i];
    if (i > to) return means(term, 'ish') && !means(term, 'about');
    return means(term, 'about', 'ish') && !means(term, 'filler');
  });
}

function isSmall(term: Term | undefined): boolean {
  return means(
    term,
    'at-hour',
    'on-day',
    'place',
    'article',
    'at',
    'since',
    'from',
    'about',
    'until',
  );
}

/** Reads one part of a time expression into `building`; returns how many terms it took. */
function partAt(frame: Frame, i: number, building: Building): number {
  const term = frame.terms[i]!;
  if (frame.taken[i]) return 0;
  return (
    dayAt(frame, i, term, building) ||
    partOfDayAt(frame, i, term, building) ||
    clockAt(frame, i, term, building)
  );
}

const parts: readonly DayPart[] = ['morning', 'noon', 'afternoon', 'evening', 'night', 'midnight'];

/** `Dienstag morgen`, `gestern morgen`: behind a day the word for tomorrow is the morning. */
export function isMorningOfDay(frame: Frame, i: number): boolean {
  const before = frame.terms[i - 1];
  const isDay = isWeekday(before) || means(before, 'yesterday', 'day-before-yesterday');
  return means(frame.terms[i], 'morning') && isDay;
}

/** `breaker tripped in the night`: of what has happened it is the night that has passed. */
function isNightPassed(frame: Frame, i: number, { said }: Building): boolean {
  const { writtenAtMs, greenhouse } = frame.context;
  if (said.day !== null || !frame.terms[i]!.text.includes(' ')) return false;
  const clause = frame.clauses[frame.clauseOf[i]!]!;
  const isDay = localTimeOf(writtenAtMs, greenhouse.timeZone).hour < nightBegins;
  return isDay && hasPastDeed(frame, clause.from, clause.to);
}

/** From this hour on `in the night` may be the one that has begun. */
const nightBegins = 17;

function partOfDayAt(frame: Frame, i: number, term: Term, building: Building): number {
  const part = parts.find((candidate) => means(term, candidate));
  if (!part) return 0;
  const before = frame.terms[i - 1];
  const isLast =
    part === 'night' && (means(before, 'last', 'yesterday') || isNightPassed(frame, i, building));
  const hasDay =
    building.said.day !== null ||
    building.headDay !== null ||
    building.said.minutes !== null ||
    means(before, 'this', 'last');
  const standsAlone =
    part === 'noon' ||
    part === 'midnight' ||
    (term.text.includes(' ') && !means(term, 'greeting', 'filler'));
  if (!hasDay && !standsAlone) return 0;
  if (means(term, 'tomorrow') && !isMorningOfDay(frame, i)) return 0;
  if (means(before, 'last') && part !== 'night') {
    const today = localDateOf(frame.context.writtenAtMs, frame.context.greenhouse.timeZone);
    building.said = { ...building.said, part, day: plusDays(today, -1) };
  } else building.said = { ...building.said, part, lastNight: isLast };
  if (building.from === i && means(before, 'this', 'last')) building.from = i - 1;
  return 1;
}

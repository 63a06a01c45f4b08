import { localDateOf, plusDays } from '../../greenhouse/local-time.ts';
import { isReading } from '../../greenhouse/quantity.ts';
import type { Fact } from '../fact.ts';
import { unitIs } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, isMeasure, measureOf } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { spanMs } from '../times/ago.ts';
import { nothingSaid } from '../times/building.ts';
import { isDuration } from '../times/day-said.ts';
import { workOut } from '../times/day-time.ts';
import { type TimeMark, unsaidTime } from '../times/time-mark.ts';

/** A value that moved: what it came from, and what it came to. */
interface Move {
  readonly before: Fact;
  readonly after: Fact;
}

/**
 * `went from 6.1 to 5.8 since yesterday`, `up to 1.9 from 1.6 on Monday`, `von 6,1 auf 5,8 in zwei Tagen`: the time
 * is that of what it came from, and what it came to holds now; but `yesterday it went from 6.1 to 5.8`.
 */
export function withTimesOfMoves(
  frame: Frame,
  facts: readonly Fact[],
  marks: readonly TimeMark[],
): readonly Fact[] {
  const times = new Map<Fact, TimeMark>();
  for (const move of movesAmong(frame, facts)) {
    const began = beginningOf(frame, move, marks);
    if (began === null) continue;
    times.set(move.before, began);
    times.set(move.after, ownTime(frame, move, marks, began) ?? nowAt(frame, move.after));
  }
  for (const after of facts) {
    if (times.has(after) || !isOnlyOutcome(frame, after)) continue;
    if (beginningOf(frame, { before: after, after }, marks) !== null)
      times.set(after, nowAt(frame, after));
  }
  if (times.size === 0) return facts;
  return facts.map((fact) => {
    const time = times.get(fact);
    return time === undefined ? fact : { ...fact, time };
  });
}

function movesAmong(frame: Frame, facts: readonly Fact[]): Move[] {
  return facts.flatMap((before) => {
    if (before.phase !== 'before' || !isReading(before.quantity)) return [];
    const after = facts.find(
      (other) =>
        other.phase === 'after' &&
        other.quantity === before.quantity &&
        frame.clauseOf[other.at] === frame.clauseOf[before.at],
    );
    return after && !isParted(frame, before, after, facts) ? [{ before, after }] : [];
  });
}

/** `fell from 8 to 7 mg/l overnight`, `drifted 6.1 to 5.8 since last night`: the first was not read as a value of its own. */
function isOnlyOutcome({ terms }: Frame, { quantity, phase, at }: Fact): boolean {
  const isLed = means(terms[at - 1], 'to') && isMeasure(terms[at - 2]);
  return isReading(quantity) && phase === undefined && isLed;
}

/** `6.4, 5 ml down, 5.9 since this morning`: what was done between the two is no move over time. */
function isParted(frame: Frame, a: Fact, b: Fact, facts: readonly Fact[]): boolean {
  const [from, to] = [Math.min(a.at, b.at), Math.max(a.at, b.at)];
  return (
    facts.some(({ at, quantity }) => at > from && at < to && !isReading(quantity)) ||
    frame.places.has('after', from, to)
  );
}

/** Since when it has moved; null: nobody says, or it has moved at the time that is told. */
function beginningOf(frame: Frame, move: Move, marks: readonly TimeMark[]): TimeMark | null {
  const clause = frame.clauses[frame.clauseOf[move.before.at]!]!;
  const told = marks.filter((mark) => mark.clause === frame.clauseOf[move.before.at]);
  const since = told.find((mark) => mark.since || isOverNight(frame, mark));
  if (since) return { ...since, since: false, vague: true };
  return told.find((mark) => isOfBefore(frame, move, mark)) ?? spanIn(frame, clause);
}

/** `overnight`, `über Nacht`: from the evening on until now. */
function isOverNight(frame: Frame, { from, to }: TimeMark): boolean {
  return frame.places.has('this-night', from, to + 1);
}

/** `from 1.6 yesterday to 1.9`, `von gestern 1,6 auf 1,9`, `to 1.9 from 1.6 yesterday`: told beside the value it came from. */
function isOfBefore(frame: Frame, { before, after }: Move, mark: TimeMark): boolean {
  if (mark.to < before.at) return means(frame.terms[mark.from - 1], 'from', 'of');
  return after.at < before.at || mark.to < after.at;
}

/** `to 1.9 today at 8`: what it came to may have a time of its own, beside it. */
function ownTime(
  frame: Frame,
  { before, after }: Move,
  marks: readonly TimeMark[],
  began: TimeMark,
): TimeMark | null {
  const end = after.at < before.at ? before.at : frame.terms.length;
  const own = marks.find(
    ({ from, clause, since }) =>
      from !== began.from &&
      !since &&
      clause === frame.clauseOf[after.at] &&
      (from > after.at ? from < end : from > before.at && after.at > before.at),
  );
  return own ?? null;
}

function nowAt({ context, clauseOf }: Frame, { at }: Fact): TimeMark {
  return { from: at, to: at, clause: clauseOf[at]!, atMs: context.writtenAtMs, ...unsaidTime };
}

/** `in two days`, `over the last 3 hours`: so long ago it was what it came from. */
function spanIn(frame: Frame, clause: Clause): TimeMark | null {
  const at = frame.places.within(isDuration, clause.from, clause.to).find((i) => {
    const lead = means(frame.terms[i - 1], 'last', 'for-so-long') ? i - 2 : i - 1;
    const isLed = lead < i - 1 || means(frame.terms[lead], 'place', 'for-so-long', 'beyond');
    return isLed && !frame.timed[i] && daysOrMs(frame, i) !== null;
  });
  if (at === undefined) return null;
  const { writtenAtMs, greenhouse } = frame.context;
  const { days, ms } = daysOrMs(frame, at)!;
  const day = plusDays(localDateOf(writtenAtMs, greenhouse.timeZone), -days);
  const atMs =
    days > 0 ? workOut({ ...nothingSaid, day }, greenhouse, writtenAtMs).atMs : writtenAtMs - ms;
  return { from: at, to: at, clause: frame.clauseOf[at]!, atMs, ...unsaidTime, vague: true };
}

function daysOrMs(frame: Frame, i: number): { readonly days: number; readonly ms: number } | null {
  const measure = measureOf(frame, i);
  const ms = spanMs(measure);
  if (ms !== null) return { days: 0, ms };
  const perUnit = unitIs(measure, 'day') ? 1 : unitIs(measure, 'week') ? 7 : 0;
  const days = Math.round((measure.values[0] ?? 0) * perUnit);
  return days > 0 ? { days, ms: 0 } : null;
}

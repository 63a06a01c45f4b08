import {
  instantOf,
  type LocalTime,
  localDateOf,
  localTimeOf,
  plusDays,
} from '../../greenhouse/local-time.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { isWeekday, means, type Term } from '../reading/term.ts';
import type { TimeMark } from './time-mark.ts';

/** From when to when something lasted. */
export interface Stretch {
  readonly begun: TimeMark;
  readonly end: TimeMark;
}

/**
 * `out yesterday from 2 to 4`, `from 22:00 to 2:00`: a clock time without a day of its own is the one nearest to the
 * end that has one. As it stands where both have a day, or neither needs one.
 */
export function stretchOf(frame: Frame, begun: TimeMark, end: TimeMark): Stretch {
  const [hasBegun, hasEnd] = [namesDay(frame, begun), namesDay(frame, end)];
  const ofDay = hasBegun && !hasEnd ? onOneDay(frame, begun, end) : null;
  if (ofDay) return ofDay;
  if (hasBegun && !hasEnd)
    return { begun, end: { ...end, ...besideAt(frame, end, begun.atMs, 1) } };
  const isBegunToCome = begun.askFrom !== null && end.askFrom === null;
  if ((hasEnd && !hasBegun) || (!hasBegun && isBegunToCome))
    return { begun: { ...begun, ...besideAt(frame, begun, end.atMs, -1) }, end };
  return { begun, end };
}

/** `Saturday from 9 to 12`: both hours on the day that is named, the latest that have passed; null: one of them is of another. */
function onOneDay(frame: Frame, begun: TimeMark, end: TimeMark): Stretch | null {
  const { timeZone } = frame.context.greenhouse;
  const day = localDateOf(begun.atMs, timeZone);
  const instants = (mark: TimeMark): readonly number[] =>
    hoursMeant(frame, mark).map(({ hour, minute }) =>
      instantOf(day, clockOf(hour, minute), timeZone),
    );
  const pairs = instants(begun).flatMap((from) =>
    instants(end)
      .filter((to) => to > from && to <= frame.context.writtenAtMs)
      .map((to) => ({ from, to })),
  );
  const latest = pairs.sort((a, b) => b.from - a.from || a.to - b.to)[0];
  if (!latest) return null;
  return {
    begun: { ...begun, atMs: latest.from, askFrom: null },
    end: { ...end, atMs: latest.to, askFrom: null },
  };
}

/** The clock time of a mark; a bare hour in the morning and in the evening. */
function hoursMeant(
  frame: Frame,
  mark: TimeMark,
): readonly { readonly hour: number; readonly minute: number }[] {
  const { timeZone } = frame.context.greenhouse;
  const { hour, minute } = localTimeOf(mark.askFrom?.[0] ?? mark.atMs, timeZone);
  const hours = isOfEitherHalf(frame, mark) ? [hour, (hour + 12) % 24] : [hour];
  return hours.map((each) => ({ hour: each, minute }));
}

/** The clock time of a mark that comes first after an instant, or last before it. */
function besideAt(
  frame: Frame,
  mark: TimeMark,
  anchorMs: number,
  side: 1 | -1,
): Pick<TimeMark, 'atMs' | 'askFrom'> {
  const { timeZone } = frame.context.greenhouse;
  const day = localDateOf(anchorMs, timeZone);
  const instants = [-1, 0, 1].flatMap((days) =>
    hoursMeant(frame, mark).map(({ hour, minute }) =>
      instantOf(plusDays(day, days), clockOf(hour, minute), timeZone),
    ),
  );
  const beside = instants
    .filter((atMs) => side * (atMs - anchorMs) > 0)
    .sort((a, b) => side * (a - b));
  return { atMs: beside[0] ?? mark.atMs, askFrom: null };
}

function clockOf(hour: number, minute: number): LocalTime {
  return `${String(hour).padStart(2, '0')}:${String(minute).padStart(2, '0')}` as LocalTime;
}

/** `to 4`: a bare hour, in the morning or the evening. */
function isOfEitherHalf(frame: Frame, mark: TimeMark): boolean {
  const said = termsOf(frame, mark);
  return (
    said.some((term) => isMeasure(term) && term.measure.values[0]! <= 12) &&
    !said.some((term) => means(term, 'am', 'pm', 'o-clock-of-24', ...partsOfDay))
  );
}

const partsOfDay = ['morning', 'noon', 'afternoon', 'evening', 'night', 'midnight'] as const;

/** Whether a time says of which day it is. */
export function namesDay(frame: Frame, mark: TimeMark): boolean {
  return termsOf(frame, mark).some(
    (term) =>
      isWeekday(term) ||
      (term.kind === 'word' && term.word.month !== null) ||
      means(
        term,
        'yesterday',
        'day-before-yesterday',
        'today',
        'last',
        'ago',
        'this-night',
        'this',
      ),
  );
}

function termsOf({ terms }: Frame, { from, to }: TimeMark): readonly Term[] {
  return terms.slice(from, to + 1);
}

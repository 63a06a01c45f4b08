import { isDeed, isLabel } from '../moods/clause-kinds.ts';
import { unitIs } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, isVolumeTerm } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { asksForClock, isClockOfOutage } from './asks-for-clock.ts';
import type { Building } from './building.ts';
import { smallHoursEnd } from './day-time.ts';

export function clockAt(frame: Frame, i: number, term: Term, building: Building): number {
  if (building.said.minutes !== null) return 0;
  const turn = term.kind === 'word' ? term.word.clockTurn : null;
  if (turn !== null) {
    const hour = frame.terms[i + 1];
    if (!isMeasure(hour) || !isHour(hour.measure.values[0]!, hour.measure.whole)) return 0;
    if (hour.measure.unit !== null) return 0;
    // `out from 10 to 2`: as likely from ten until two.
    if (means(frame.terms[i - 1], 'from') && /^\d/.test(term.text)) return 0;
    return settle(
      frame,
      i,
      2,
      hour.measure.values[0]! * 60 + turn,
      hour.measure.values[0]! <= 12,
      building,
    );
  }
  if (term.kind === 'clock') return settle(frame, i, 1, term.minutes, false, building);
  if (
    term.kind === 'digits' &&
    /^0\d{3}$/.test(term.text) &&
    (means(frame.terms[i - 1], 'at-hour') || frame.clauses[frame.clauseOf[i]!]!.from === i)
  ) {
    return settle(
      frame,
      i,
      1,
      Number(term.text.slice(0, 2)) * 60 + Number(term.text.slice(2)),
      false,
      building,
    );
  }
  if (!isMeasure(term)) return 0;
  const { measure } = term;
  const value = measure.values[0]!;
  const marked =
    (means(frame.terms[i + 1], 'am', 'pm', 'o-clock') &&
      !means(frame.terms[i + 1], 'ish', 'this')) ||
    isOfPartOfDay(frame, i) ||
    isHourOfPart(frame, i, building) ||
    isHourAlone(frame, i) ||
    isAboutHour(frame, i, building);
  const asHour =
    unitIs(measure, 'hour') &&
    term.text.endsWith('h') &&
    means(frame.terms[i - 1], 'at-hour') &&
    value > 0;
  if (measure.unit !== null && !asHour) return 0;
  const isTime = () => marked || isClockOfOutage(frame, i) || asksForClock(frame, i);
  if (measure.decimals === 2 && isTime()) {
    const minute = Math.round((value % 1) * 100);
    if (value >= 0 && value < 24 && minute < 60)
      return settle(frame, i, 1, Math.floor(value) * 60 + minute, false, building);
  }
  if (!isHour(value, measure.whole) || countsTimes(frame, i)) return 0;
  if (!marked && !asHour && !asksForClock(frame, i)) return 0;
  // `18 Uhr` is said by the clock; a bare 18 is the latest that has passed.
  const byClock = value > 12 && means(frame.terms[i + 1], 'o-clock');
  return settle(frame, i, 1, value * 60, !byClock, building);
}

/** `about 7 this morning`, `, 8 last night`: nothing before it that it could be the amount of. */
function isOfPartOfDay(frame: Frame, i: number): boolean {
  const before = frame.terms[i - 1];
  if (i > 0 && before?.kind !== 'stop' && !means(before, 'about')) return false;
  const next = means(frame.terms[i + 1], 'this', 'last') ? frame.terms[i + 2] : frame.terms[i + 1];
  return (
    means(next, 'morning', 'evening', 'afternoon', 'night') && !means(next, 'greeting', 'filler')
  );
}

/** `it was this morning at 7`: an hour of the part of day before it, where no reading is told that it could be. */
function isHourOfPart(
  { terms, clauses, clauseOf, places }: Frame,
  i: number,
  { said, to }: Building,
): boolean {
  if (said.part === null || to !== i - 2) return false;
  if (!means(terms[i - 1], 'at-hour') || !means(terms[i - 1], 'at')) return false;
  const clause = clauses[clauseOf[i]!]!;
  return !places.hasWhere(isLabel, clause.from, clause.to);
}

/** `put a can in the bench, 7ish`, `like 7ish, put a can in the bench`: alone beside an amount, where no reading is told. */
function isHourAlone({ terms, clauses, clauseOf, places }: Frame, i: number): boolean {
  if (!means(terms[i + 1], 'ish') || !means(terms[i + 1], 'o-clock')) return false;
  const { from, to } = clauses[clauseOf[i]!]!;
  if (i + 2 !== to || places.hasWhere(isLabel, 0, terms.length)) return false;
  for (let j = from; j < i; j++)
    if (!means(terms[j], 'about', 'filler', 'in-the-way', 'at-hour')) return false;
  return places.hasWhere(isVolumeTerm, 0, terms.length);
}

/** `last night about 9: dwc ph 5.8`: blurred straight behind the day that opens what is told, with the value still to come. */
function isAboutHour(
  { terms, clauses, clauseOf, places }: Frame,
  i: number,
  { said, from, to }: Building,
): boolean {
  if ((said.day === null && said.part === null) || to !== i - 2) return false;
  if (!means(terms[i - 1], 'about') || isLabel(terms[i + 1])) return false;
  const opening = clauses[clauseOf[i]!]!.from;
  const isOfOther = terms
    .slice(opening, from)
    .some((term) => term.kind === 'name' || isMeasure(term) || isLabel(term) || isDeed(term));
  return !isOfOther && places.hasWhere(isMeasure, i + 1, terms.length);
}

function isHour(value: number, whole: boolean): boolean {
  return whole && value >= 0 && value <= 24;
}

function settle(
  frame: Frame,
  i: number,
  length: number,
  minutes: number,
  eitherHalf: boolean,
  building: Building,
): number {
  let used = length;
  let minutesAfter = 0;
  let byClock = false;
  if (means(frame.terms[i + used], 'o-clock')) {
    byClock = means(frame.terms[i + used], 'o-clock-of-24');
    used++;
    // `8 Uhr 15`.
    const next = frame.terms[i + used];
    const isMinute = isMeasure(next) && next.measure.unit === null && next.measure.whole;
    if (isMinute && minutes % 60 === 0 && next.measure.values[0]! < 60) {
      minutesAfter = next.measure.values[0]!;
      used++;
    }
  }
  const after = frame.terms[i + used];
  // `2 Uhr nachts` is before dawn, `11 Uhr nachts` before midnight.
  const isSmallHour = means(after, 'night') && minutes < smallHoursEnd;
  const meridiem =
    means(after, 'am') || (isSmallHour && means(after, 'pm'))
      ? 'am'
      : means(after, 'pm')
        ? 'pm'
        : null;
  if (meridiem !== null) used++;
  building.said = {
    ...building.said,
    minutes: minutes + minutesAfter,
    eitherHalf: eitherHalf && meridiem === null,
    byClock: byClock && meridiem === null,
    meridiem,
  };
  return used;
}

/** `off 2 or 3 times`, `went 4 times`: how often, and not when. */
function countsTimes({ terms }: Frame, i: number): boolean {
  let at = i + 1;
  while (isMeasure(terms[at]) || means(terms[at], 'or')) at++;
  return at - i <= 3 && means(terms[at], 'times') && /\p{L}/u.test(terms[at]!.text);
}

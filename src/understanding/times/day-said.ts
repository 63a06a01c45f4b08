import { type LocalDate, localDateOf, localTimeOf, plusDays } from '../../greenhouse/local-time.ts';
import { unitIs } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Building } from './building.ts';
import { dateAt } from './date-said.ts';

export function dayAt(frame: Frame, i: number, term: Term, building: Building): number {
  const { greenhouse, writtenAtMs } = frame.context;
  const today = localDateOf(writtenAtMs, greenhouse.timeZone);
  const set = (day: LocalDate, length = 1) => {
    building.said = { ...building.said, day };
    return length;
  };
  if (means(term, 'day-before-yesterday')) return set(plusDays(today, -2));
  if (means(term, 'yesterday')) return set(plusDays(today, -1));
  if (means(term, 'earlier') && !isDuration(frame.terms[i - 1])) {
    building.earlier = true;
    return 1;
  }
  if (means(term, 'today')) return set(today);
  if (means(term, 'tonight')) {
    building.said = { ...building.said, day: today, part: 'night' };
    return 1;
  }
  if (means(term, 'this-night')) {
    const isPast = localTimeOf(writtenAtMs, greenhouse.timeZone).hour < 12;
    building.said = isPast
      ? { ...building.said, part: 'night', lastNight: true }
      : { ...building.said, day: today, part: 'night' };
    return 1;
  }
  if (term.kind === 'word' && term.word.weekday !== null && isWeekday(frame, i, term.text)) {
    const back =
      (localTimeOf(writtenAtMs, greenhouse.timeZone).weekday - term.word.weekday + 7) % 7;
    const said = means(frame.terms[i - 1], 'last');
    building.said = {
      ...building.said,
      weekdayOfToday: back === 0 && !said && !means(frame.terms[i - 1], 'this'),
    };
    return set(plusDays(today, -(back === 0 && said ? 7 : back)));
  }
  return dateAt(frame, i, set);
}

/** `two days`, `3 hours`: how long, and no reading of anything. */
export function isDuration(term: Term | undefined): boolean {
  return isMeasure(term) && unitIs(term.measure, 'second', 'minute', 'hour', 'day', 'week');
}

/** `sun` and `sat` are other words too: short forms need something beside them. */
function isWeekday(frame: Frame, i: number, text: string): boolean {
  if (text.length > 4) return true;
  return (
    means(frame.terms[i - 1], 'on-day', 'last', 'this', 'since') ||
    means(frame.terms[i + 1], 'morning', 'evening', 'afternoon', 'night', 'noon', 'at-hour') ||
    frame.terms[i + 1]?.kind === 'clock'
  );
}

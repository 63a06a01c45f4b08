import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { type Calendar, calendarUntil } from '../../src/logbook/calendar.ts';

/** The same days, by the library of local time alone. */
function byTheBook(timeZone: string, fromMs: number, toMs: number): Calendar {
  const days: Calendar[number][] = [];
  let start = DateTime.fromMillis(fromMs, { zone: timeZone }).startOf('day');
  while (start.toMillis() <= toMs) {
    const end = start.plus({ days: 1 }).startOf('day');
    days.push({
      date: start.toISODate() as Calendar[number]['date'],
      startMs: start.toMillis(),
      endMs: end.toMillis(),
      dayOfYear: start.ordinal,
    });
    start = end;
  }
  return days;
}

describe('The calendar of a greenhouse', () => {
  it.each([
    ['clocks go forward', 'Europe/London', '2027-03-20', '2027-04-05'],
    ['clocks go back', 'Europe/London', '2027-10-25', '2027-11-05'],
    ['midnight itself is skipped', 'America/Asuncion', '2023-09-28', '2023-10-04'],
    ['a leap year ends', 'America/New_York', '2027-12-28', '2029-01-03'],
    ['a date is left out', 'Pacific/Apia', '2011-12-28', '2012-01-02'],
    ['there are four digits of years no more', 'Europe/Berlin', '9999-12-29', '+010000-01-03'],
  ])('is that of the wall clock where %s', (_, timeZone, from, to) => {
    const [fromMs, toMs] = [Date.parse(`${from}T13:00:00Z`), Date.parse(`${to}T02:00:00Z`)];
    const expected = byTheBook(timeZone, fromMs, toMs);
    expect(calendarUntil([], timeZone, fromMs, toMs)).toEqual(expected);
    const half = calendarUntil([], timeZone, fromMs, (fromMs + toMs) / 2);
    expect(calendarUntil(half, timeZone, fromMs, toMs)).toEqual(expected);
  });
});

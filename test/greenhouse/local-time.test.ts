import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import {
  instantOf,
  type LocalDate,
  type LocalTime,
  localDateOf,
} from '../../src/greenhouse/local-time.ts';

const zones = ['Europe/London', 'America/New_York', 'Australia/Lord_Howe', 'Asia/Kathmandu', 'UTC'];
const zone = fc.constantFrom(...zones);
const firstMs = Date.parse('2020-01-01');
const lastMs = Date.parse('2030-01-01');
const instant = fc.integer({ min: firstMs, max: lastMs });

describe('the wall clock of a greenhouse', () => {
  it('has the date that luxon has, at any instant, in any order', () => {
    fc.assert(
      fc.property(zone, fc.array(instant, { minLength: 1, maxLength: 20 }), (timeZone, all) => {
        for (const atMs of all) {
          const expected = DateTime.fromMillis(atMs, { zone: timeZone }).toISODate();
          expect(localDateOf(atMs, timeZone)).toBe(expected);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('shows the time again at the instant of a time', () => {
    fc.assert(
      fc.property(zone, instant, (timeZone, atMs) => {
        const minute = Math.floor(atMs / 60_000) * 60_000;
        const wall = DateTime.fromMillis(minute, { zone: timeZone });
        const date = wall.toISODate() as LocalDate;
        const found = instantOf(date, wall.toFormat('HH:mm') as LocalTime, timeZone);
        const shown = DateTime.fromMillis(found, { zone: timeZone });
        expect(shown.toFormat('yyyy-MM-dd HH:mm')).toBe(wall.toFormat('yyyy-MM-dd HH:mm'));
        // Where the clock shows it twice, it is the first.
        expect(found).toBeLessThanOrEqual(minute);
      }),
      { numRuns: 1000 },
    );
  });

  it.each([
    ['Europe/London', '2027-03-28', '01:30', '2027-03-28T02:00:00+01:00'],
    ['Europe/London', '2027-10-31', '01:30', '2027-10-31T01:30:00+01:00'],
    ['Australia/Lord_Howe', '2027-10-03', '02:10', '2027-10-03T02:30:00+11:00'],
    ['America/New_York', '2027-11-07', '12:00', '2027-11-07T12:00:00-05:00'],
  ])('takes the first instant where the clock of %s changes on %s at %s', (of, date, time, at) => {
    expect(instantOf(date as LocalDate, time as LocalTime, of)).toBe(Date.parse(at));
  });

  it('has no day that a zone left out', () => {
    expect(localDateOf(Date.parse('2011-12-31T12:00:00+14:00'), 'Pacific/Apia')).toBe('2011-12-31');
    instantOf('2011-12-30' as LocalDate, '12:00' as LocalTime, 'Pacific/Apia');
    expect(localDateOf(Date.parse('2011-12-31T13:00:00+14:00'), 'Pacific/Apia')).toBe('2011-12-31');
  });
});

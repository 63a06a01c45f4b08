import { describe, expect, it } from 'vitest';
import type { DutyLine } from '../../../src/planning/duty-line.ts';
import { wordings } from '../../../src/wording/wordings.ts';
import {
  americanLane,
  bench,
  benchTopUp,
  buckets,
  check,
  date,
  gutters,
  jarTopUp,
  nowMs,
  reader,
  tieUp,
  today,
} from '../quarry-lane.ts';

const { reply, duty, why } = wordings.en;

function water(more: object): DutyLine {
  return { ...benchTopUp, reason: { ...benchTopUp.reason, ...more } };
}

function work(more: Partial<DutyLine['duty']>): DutyLine {
  return { ...tieUp, duty: { kind: 'clean', system: buckets, dueOn: today, ...more } };
}

describe('an English duty', () => {
  it('tells a top-up in litres and in cans', () => {
    expect(duty(benchTopUp, reader)).toBe(
      'Top up North bench with up to 43 L (4½ cans), to the brim',
    );
  });

  it('never sends a non-circulating system back to its brim', () => {
    expect(duty(jarTopUp, reader)).toBe(
      'Top up Jar shelf with about 2.5 L, to 15 L at most, 6.8 cm below the brim',
    );
    const nearly = { ...jarTopUp.reason, fillToL: 23.9 };
    expect(duty({ ...jarTopUp, reason: nearly }, reader)).toContain('to just under the brim');
  });

  it('tells what to mix into a top-up', () => {
    const line = {
      ...benchTopUp,
      duty: {
        ...benchTopUp.duty,
        strength: 'half',
        concentrates: [
          { product: 'nutrient-a', mL: 60 },
          { product: 'nutrient-b', mL: 60 },
        ],
      },
    } as const;
    expect(duty(line, reader)).toBe(
      'Top up North bench with up to 43 L (4½ cans) of half-strength solution, to the brim: 60 mL nutrient A and 60 mL nutrient B, 13.5 mL of each to 1 can',
    );
  });

  it('speaks gallons and buckets of that household', () => {
    expect(duty(benchTopUp, { greenhouse: americanLane, nowMs })).toBe(
      'Top up North bench with up to 11.5 gal (2½ buckets), to the brim',
    );
  });

  it.each([
    [check(buckets), 'Check pH and EC of Bucket row'],
    [work({ kind: 'dose', mL: 12, product: 'ph-down' }), 'Add 12 mL pH down to Bucket row'],
    [
      work({ kind: 'reservoir-change', litres: 108 }),
      'Change the solution of Bucket row, about 108 L',
    ],
    [work({ kind: 'calibration', system: null, probe: 'pen' }), 'Calibrate the pen'],
    [
      work({ kind: 'aeration', system: gutters, minutesPerHour: 10 }),
      'Set the aeration of Gutter run to 10 min an hour',
    ],
    [work({ kind: 'clean' }), 'Clean Bucket row'],
    [work({ kind: 'clean', parts: ['air-stones'] }), 'Clean the air stones of Bucket row'],
    [tieUp, 'Tie up the tomatoes (North bench)'],
  ])('tells the work plainly, case %#', (line, told) => {
    expect(duty(line, reader)).toBe(told);
  });
});

describe('an English reason', () => {
  it('gives the numbers behind a top-up', () => {
    expect(why(benchTopUp, reader)).toBe(
      'About 180 L left and it drinks about 24 L a day, so it could reach the low mark (150 L) by Thursday.',
    );
  });

  it.each([
    [{ lowOnEarly: today }, 'so it could reach the low mark (150 L) today.'],
    [{ lowOnEarly: date('2027-05-05') }, 'by tomorrow.'],
    [{ lowOnEarly: date('2027-05-12') }, 'by 12 May.'],
    [{ lowOnEarly: null }, 'so the low mark (150 L) is more than two months away.'],
    [
      { litresNow: 149 },
      'About 149 L left, which is no more than the low mark (150 L), and it drinks about 24 L a day.',
    ],
  ])('says how near the low mark is, case %#', (more, ending) => {
    const text = why(water(more), reader);
    expect(text.endsWith(ending)).toBe(true);
  });

  it('says when it was last measured or done', () => {
    expect(why(check(buckets), reader)).toBe('Last measured yesterday.');
    expect(why(tieUp, reader)).toBe('To be done every 5 days, last done on Friday.');
  });
});

describe('an English round', () => {
  it('lists the duties of the trip in order, alike checks as one, the rest while there', () => {
    const duties = [benchTopUp, check(bench), check(buckets), tieUp];
    expect(reply({ kind: 'round', date: today, isLate: false, duties }, reader)).toBe(
      [
        'Tuesday 4 May: 2 things to do.',
        '1. Top up North bench with up to 43 L (4½ cans), to the brim. About 180 L left and it drinks about 24 L a day, so it could reach the low mark (150 L) by Thursday.',
        '2. Check pH and EC of North bench and Bucket row. Last measured yesterday.',
        'While you are there:',
        '3. Tie up the tomatoes (North bench). To be done every 5 days, last done on Friday.',
      ].join('\n'),
    );
  });

  it('is one line where nothing is due', () => {
    expect(reply({ kind: 'round', date: today, isLate: false, duties: [] }, reader)).toBe(
      'Tuesday 4 May: nothing to do.',
    );
  });

  it('says that it is late', () => {
    expect(reply({ kind: 'round', date: today, isLate: true, duties: [] }, reader)).toBe(
      'Tuesday 4 May (late: I was not running at 07:00): nothing to do.',
    );
  });

  it('shows what became of each duty, and who said so, without its reason', () => {
    const duties = [benchTopUp, check(bench), check(buckets)];
    const done = { state: 'done', by: 'tomas', said: null } as const;
    const cannot = { state: 'cannot', by: 'olli', note: 'lid is stuck', said: null } as const;
    const round = { kind: 'round', date: today, isLate: false, duties } as const;
    expect(reply({ ...round, marks: [done, cannot, null] }, reader)).toBe(
      [
        'Tuesday 4 May: 1 thing to do.',
        '1. ✓ Top up North bench with up to 43 L (4½ cans), to the brim (Tomas).',
        '2. ✗ Check pH and EC of North bench (not done, Olli: lid is stuck).',
        '3. Check pH and EC of Bucket row. Last measured yesterday.',
      ].join('\n'),
    );
    expect(reply({ ...round, marks: [done, done, done] }, reader)).toBe(
      [
        'Tuesday 4 May: nothing left to do.',
        '1. ✓ Top up North bench with up to 43 L (4½ cans), to the brim (Tomas).',
        '2. ✓ Check pH and EC of North bench and Bucket row (Tomas).',
      ].join('\n'),
    );
  });
});

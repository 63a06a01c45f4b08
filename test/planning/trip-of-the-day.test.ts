import { describe, expect, test } from 'vitest';
import type { LocalDate } from '../../src/greenhouse/local-time.ts';
import { systemIdAt } from '../../src/greenhouse/system.ts';
import type { DutyLine } from '../../src/planning/duty-line.ts';
import { tripOfTheDay } from '../../src/planning/trip-of-the-day.ts';

const day = (n: number): LocalDate => `2027-06-${String(n).padStart(2, '0')}` as LocalDate;
const today = day(10);

function chore(dueOn: number, ridesFrom: number, waitsUntil: number): DutyLine {
  return {
    duty: { kind: 'chore', system: null, chore: 'sweep', dueOn: day(dueOn) },
    ridesFrom: day(ridesFrom),
    waitsUntil: day(waitsUntil),
    reason: { kind: 'chore', everyDays: 5, lastDoneOn: day(1) },
  };
}

function topUp(dueOn: number): DutyLine {
  return {
    duty: { kind: 'top-up', system: systemIdAt(1), dueOn: day(dueOn), litres: 10 },
    ridesFrom: null,
    reason: {
      kind: 'water',
      isLevelKnown: true,
      litresNow: 80,
      litresSd: 2,
      usePerDayL: 5,
      lowL: 40,
      lowOnEarly: null,
      lowOnLikely: null,
      fillToL: 90,
      wantsLevel: false,
    },
  };
}

const kinds = (lines: readonly DutyLine[]) => lines.map(({ duty }) => duty.kind);

describe('Work that is due', () => {
  test('waits for a water trip that comes within its grace', () => {
    const { today: now, later } = tripOfTheDay([chore(10, 8, 12), topUp(11)], today);
    expect(now).toEqual([]);
    expect(later.map(({ duty }) => duty.dueOn)).toEqual([day(11), day(11)]);
  });

  test('waits to the last day of its grace where no water trip comes before', () => {
    const { today: now, later } = tripOfTheDay([chore(9, 8, 12), topUp(20)], today);
    expect(now).toEqual([]);
    expect(later.map(({ duty }) => duty.dueOn)).toEqual([day(12), day(20)]);
  });

  test('makes a trip of its own when its grace ends, and takes along what waits as well', () => {
    const lines = [chore(8, 6, 10), chore(9, 8, 14), topUp(20)];
    expect(kinds(tripOfTheDay(lines, today).today)).toEqual(['chore', 'chore']);
  });

  test('waits past its grace for a trip that comes soon after, and not for a later one', () => {
    const { today: now, later } = tripOfTheDay([chore(8, 6, 10), topUp(12)], today);
    expect(now).toEqual([]);
    expect(later.map(({ duty }) => duty.dueOn)).toEqual([day(12), day(12)]);
    expect(kinds(tripOfTheDay([chore(8, 6, 10), topUp(13)], today).today)).toEqual(['chore']);
    expect(kinds(tripOfTheDay([chore(5, 3, 9), topUp(12)], today).today)).toEqual(['chore']);
  });

  test('waits for whoever comes back and goes anyway', () => {
    const { today: now, later } = tripOfTheDay([chore(8, 6, 10), topUp(20)], today, day(12));
    expect(now).toEqual([]);
    expect(later.map(({ duty }) => duty.dueOn)).toEqual([day(12), day(20)]);
  });

  test('never waits past its grace where a solution is out of range', () => {
    const dose: DutyLine = {
      ...chore(8, 6, 10),
      duty: { kind: 'dose', system: systemIdAt(1), dueOn: day(8) },
    };
    expect(kinds(tripOfTheDay([dose, topUp(11)], today).today)).toEqual(['dose']);
  });

  test('never waits without a grace', () => {
    const { waitsUntil: _none, ...strict } = chore(10, 8, 12);
    expect(kinds(tripOfTheDay([strict, topUp(11)], today).today)).toEqual(['chore']);
  });
});

describe('Work that is not due yet', () => {
  test('rides along on a trip from its early date on, and not before', () => {
    const lines = [topUp(10), chore(13, 10, 14), chore(20, 15, 22)];
    const { today: now, later } = tripOfTheDay(lines, today);
    expect(now.map(({ duty }) => [duty.kind, duty.alongside ?? false])).toEqual([
      ['top-up', false],
      ['chore', true],
    ]);
    expect(later).toHaveLength(1);
  });
});

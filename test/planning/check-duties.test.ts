import { describe, expect, test } from 'vitest';
import { boardOf } from '../../src/assistant/board-of.ts';
import { checkCadence } from '../../src/planning/check-cadence.ts';
import type { DutyLine } from '../../src/planning/duty-line.ts';
import {
  buckets,
  may,
  quarryLane,
  type Said,
  standingWith,
} from '../assistant/quarry-lane-standing.ts';

const days = [4, 5, 6, 7, 8, 9, 10];

/** A reading of pH and EC of the bucket row on each of the days. */
function readings(ph: (position: number) => number): readonly Said[] {
  return days.flatMap((day, position) => [
    { system: buckets, quantity: 'ph' as const, value: ph(position), at: may(day) },
    { system: buckets, quantity: 'ec' as const, value: 1.9, at: may(day) },
  ]);
}

function checkOn(said: readonly Said[], nowIso: string): DutyLine {
  const { today, later } = boardOf(standingWith(said, nowIso), Date.parse(nowIso));
  return [...today, ...later].find(({ duty }) => duty.kind === 'check' && duty.system === buckets)!;
}

const bucketRow = quarryLane.systems.find(({ id }) => id === buckets)!;
const steady = readings((position) => 5.85 + (position % 2) * 0.04);
const falling = readings((position) => 6.1 - position * 0.09);

describe('A check of pH and EC', () => {
  test('is due on the first day, when nothing was measured yet', () => {
    const check = checkOn([], may(1));
    expect(check.duty.dueOn).toBe('2027-05-01');
    expect(check.reason).toMatchObject({ lastOn: null, drift: null });
  });

  test('comes after a few days as long as one reading tells no drift, and claims none', () => {
    const check = checkOn(steady.slice(0, 2), may(4, '12:00'));
    expect(check.duty.dueOn > '2027-05-05').toBe(true);
    expect(check.duty.dueOn < '2027-05-10').toBe(true);
    expect(check.reason).toMatchObject({ drift: null });
  });

  test('comes seldom in a steady system, and early in one that drifts towards its edge', () => {
    const of = (said: readonly Said[]) =>
      checkCadence(bucketRow, 'ph', standingWith(said, may(10, '12:00')).logbook).everyDays;
    expect(of(steady)).toBeGreaterThanOrEqual(4);
    expect(of(falling)).toBe(1);
  });

  test('tells the drift that makes it due, and the range it may leave', () => {
    const check = checkOn(falling, may(11));
    expect(check.reason).toMatchObject({
      kind: 'not-measured',
      drift: { quantity: 'ph', lowest: 5.5, highest: 6.2 },
    });
    const { drift } = check.reason as Extract<DutyLine['reason'], { kind: 'not-measured' }>;
    expect(drift!.perDay).toBeLessThan(-0.05);
    expect(drift!.perDay).toBeGreaterThan(-0.13);
  });

  test('that was reported done without figures stands for some days, and invents no reading', () => {
    const done: Said = { system: buckets, quantity: 'duty-done', duty: 'check', at: may(11) };
    expect(checkOn([done], may(11, '12:00')).duty.dueOn > '2027-05-12').toBe(true);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chanceOutside,
  type DriftReading,
  daysUntilCheck,
  driftIn,
  driftOf,
} from '../../src/estimation/reading-drift.ts';

const day = 86_400_000;
const ph = {
  readingSd: 0.04,
  wanderSdPerDay: 0.05,
  slopeTurnSdPerDay: 0.01,
  disturbanceSd: 0.4,
  slopeSd: 0.08,
};
const band = [5.8, 6.4] as const;

function daily(values: readonly number[]): DriftReading[] {
  return values.map((value, i) => ({ atMs: i * day, value, disturbed: false }));
}

describe('the drift of a reading', () => {
  it('takes one reading to go on as is usual, and none for nothing', () => {
    expect(driftOf([], ph, 0)).toBeNull();
    const { mean, slopePerDay, slopeSd } = driftIn(driftOf(daily([6]), ph, 0)!, 3);
    expect([mean, slopePerDay]).toEqual([6, 0]);
    expect(slopeSd).toBeGreaterThanOrEqual(ph.slopeSd);
  });

  it('sees a steady rise and goes on along it', () => {
    const drift = driftOf(daily([5.8, 5.88, 5.97, 6.05, 6.12, 6.21]), ph, 5 * day)!;
    expect(driftIn(drift, 0).slopePerDay).toBeCloseTo(0.08, 1);
    expect(driftIn(drift, 3).mean).toBeGreaterThan(6.35);
  });

  it('keeps the slope and lets go of the level when something was put in', () => {
    const rising = daily([5.8, 5.9, 6.0, 6.1, 6.2]);
    const dosed = [...rising, { atMs: 5 * day, value: 5.8, disturbed: true }];
    const drift = driftOf(dosed, ph, 5 * day)!;
    expect(driftIn(drift, 0).mean).toBeCloseTo(5.8, 1);
    expect(driftIn(drift, 0).slopePerDay).toBeGreaterThan(0.05);
  });

  it('has a steady system measured less often than a lively one', () => {
    const steady = driftOf(daily([6.1, 6.1, 6.11, 6.1, 6.1, 6.09, 6.1, 6.1]), ph, 7 * day)!;
    const lively = driftOf(daily([6.1, 6.3, 6.0, 6.2, 5.9, 6.2, 6.0, 6.1]), ph, 7 * day)!;
    const wait = (drift: typeof steady) => daysUntilCheck(drift, band, 0.1, [1, 7]);
    expect(wait(steady)).toBeGreaterThan(wait(lively));
    expect(wait(lively)).toBe(1);
  });

  it('is never surer of later days', () => {
    const values = fc.array(fc.double({ min: 5.5, max: 6.8, noNaN: true }), {
      minLength: 2,
      maxLength: 20,
    });
    fc.assert(
      fc.property(values, fc.double({ min: 0, max: 5, noNaN: true }), (readings, days) => {
        const drift = driftOf(daily(readings), ph, readings.length * day)!;
        expect(driftIn(drift, days + 1).sd).toBeGreaterThanOrEqual(driftIn(drift, days).sd);
        const chance = chanceOutside(drift, band, days);
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(1);
      }),
    );
  });
});

import { describe, expect, it } from 'vitest';
import { daysUntilCalibration } from '../../src/estimation/probe-drift.ts';

const day = 86_400_000;
/** A pH pen that is read to 0.02 and wanders 0.02 a root day. */
const usual = { readingVar: 0.02 ** 2, levelVarPerDay: 0.02 ** 2 };

const fortnightly = (errors: readonly number[]) =>
  errors.map((error, i) => ({ atMs: i * 14 * day, error }));

describe('the drift of a probe', () => {
  it('is not known before a first calibration', () => {
    expect(daysUntilCalibration([], usual, 0.1, 60, 0)).toBeNull();
  });

  it('follows the usual wandering at first', () => {
    // 0.1² = 0.02² + 0.02² · days gives 24 days.
    const due = daysUntilCalibration([{ atMs: 0, error: 0.02 }], usual, 0.1, 60, 0)!;
    expect(due).toBeGreaterThanOrEqual(24);
    expect(due).toBeLessThanOrEqual(25);
  });

  it('calls sooner for a probe with a history of large errors', () => {
    const errors = fortnightly([0.3, -0.35, 0.4, 0.3, -0.3, 0.35]);
    const lively = daysUntilCalibration(errors, usual, 0.1, 60, 70 * day)!;
    expect(lively).toBeLessThan(12);
  });

  it('counts the days already gone', () => {
    const fresh = daysUntilCalibration([{ atMs: 0, error: 0 }], usual, 0.1, 60, 0)!;
    const later = daysUntilCalibration([{ atMs: 0, error: 0 }], usual, 0.1, 60, 10 * day)!;
    expect(later).toBe(fresh - 10);
  });

  it('is bounded however steady the probe', () => {
    const errors = fortnightly([0, 0.001, 0, -0.001, 0, 0]);
    expect(daysUntilCalibration(errors, usual, 0.5, 60, 70 * day)).toBe(60);
  });
});

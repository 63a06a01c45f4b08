import { describe, expect, it } from 'vitest';
import { explainedVariance } from '../../src/estimation/explained-variance.ts';
import { belowChance, lossChance } from '../../src/estimation/loss-mixture.ts';
import { normalCdf } from '../../src/estimation/normal.ts';
import { ANCHOR, LOST, STATE_SIZE } from '../../src/estimation/water-belief.ts';

describe('the normal distribution', () => {
  // Abramowitz and Stegun 1964, table 26.1.
  it.each([
    [0, 0.5],
    [1, 0.8413447461],
    [1.6449, 0.95],
    [2.3263, 0.99],
    [-3, 0.001349898],
  ])('is as tabled at %d', (z, p) => {
    expect(normalCdf(z)).toBeCloseTo(p, 5);
  });
});

describe('a mixture of losses', () => {
  it('is log-normal by its moments where there is one part', () => {
    // ln X ~ N(2, 0.3²): median e², and one standard deviation above it at 15.87 %.
    const mean = Math.exp(2 + 0.045);
    const parts = [{ weight: 1, lost: mean, variance: mean ** 2 * Math.expm1(0.09) }];
    expect(lossChance(parts, Math.exp(2))).toBeCloseTo(0.5, 6);
    expect(lossChance(parts, Math.exp(2.3))).toBeCloseTo(0.15866, 4);
  });

  it('weighs its parts', () => {
    const parts = [
      { weight: 0.25, lost: 5, variance: 0 },
      { weight: 0.75, lost: 10, variance: 0 },
    ];
    expect(lossChance(parts, 7)).toBe(0.75);
  });

  it('allows for a level that was not known to begin with', () => {
    const state = (anchorVar: number) => {
      const mean = new Array<number>(STATE_SIZE).fill(0);
      const cov = new Array<number>(STATE_SIZE ** 2).fill(0);
      mean[ANCHOR] = 100;
      mean[LOST] = 20;
      cov[ANCHOR * STATE_SIZE + ANCHOR] = anchorVar;
      cov[LOST * STATE_SIZE + LOST] = 4;
      return { weight: 1, mean, cov };
    };
    expect(belowChance([state(0)], 70)).toBeLessThan(1e-4);
    // Level 80 with variance 100 + 4: P(below 70) = Φ(−10/√104) = 0.163.
    expect(belowChance([state(100)], 70)).toBeCloseTo(0.163, 2);
  });
});

describe('explained variance', () => {
  it('is the squared covariance over the variance where one other is known', () => {
    const cov = new Array<number>(STATE_SIZE ** 2).fill(0);
    cov[0] = 4;
    cov[LOST * STATE_SIZE] = 3;
    cov[LOST] = 3;
    cov[LOST * STATE_SIZE + LOST] = 9;
    expect(explainedVariance(cov, LOST)).toBeCloseTo(9 / 4, 12);
  });
});

import { describe, expect, it } from 'vitest';
import { surpriseOf } from '../../src/estimation/water-surprise.ts';
import { dayMs, folded, steadyFills, stillDays, tubs } from './still-weather.ts';

describe('a surprise in the water', () => {
  const belief = folded(steadyFills(6, 3, 10));
  const found = (litres: number) => surpriseOf(tubs, belief, 33 * dayMs + 8e6, litres, stillDays);

  it('is none where the level is as expected', () => {
    const usual = found(91);
    expect(usual.expectedL).toBeGreaterThan(87);
    expect(usual.expectedL).toBeLessThan(95);
    expect(usual.chanceOfLess).toBeGreaterThan(0.05);
    expect(usual.chanceOfMore).toBeGreaterThan(0.05);
  });

  it('is large after a leak', () => {
    expect(found(60).chanceOfLess).toBeLessThan(0.001);
  });

  it('is large where nothing was drunk', () => {
    expect(found(107).chanceOfMore).toBeLessThan(0.01);
  });
});

import { describe, expect, it } from 'vitest';
import { plainPrior, priorFrom } from '../../src/estimation/water-prior.ts';
import { startBelief } from '../../src/estimation/water-start.ts';
import { folded, steadyFills, tubs } from './still-weather.ts';

describe('the start of a new system', () => {
  const thirsty = { system: tubs, belief: folded(steadyFills(11, 2, 40)) };
  const frugal = { system: tubs, belief: folded(steadyFills(2, 8, 12)) };

  it('is the plain guess where nothing was learned', () => {
    expect(priorFrom([])).toEqual(plainPrior);
    const fresh = priorFrom([{ system: tubs, belief: startBelief(tubs, 0) }]);
    expect(fresh.grownShift.mean).toBeCloseTo(plainPrior.grownShift.mean, 6);
    expect(fresh.grownShift.variance).toBeCloseTo(plainPrior.grownShift.variance, 2);
  });

  it('is thirstier beside thirsty systems than beside frugal ones', () => {
    const beside = (peer: typeof thirsty) => priorFrom([peer, peer, peer]).grownShift;
    expect(beside(thirsty).mean).toBeGreaterThan(beside(frugal).mean + 0.3);
    expect(beside(thirsty).variance).toBeLessThan(plainPrior.grownShift.variance);
  });

  it('takes over how even the days are', () => {
    const { modelWeights } = priorFrom([thirsty, frugal]);
    expect(modelWeights.reduce((sum, w) => sum + w, 0)).toBeCloseTo(1, 10);
    expect(modelWeights[0]!).toBeGreaterThan(plainPrior.modelWeights[0]!);
  });

  it('keeps what is a system’s own, however many peers there are', () => {
    const many = priorFrom(Array.from({ length: 50 }, () => thirsty));
    expect(Math.sqrt(many.grownShift.variance)).toBeGreaterThan(0.35);
  });
});

import { describe, expect, it } from 'vitest';
import { filterLocalTrend, trendAhead } from '../../src/estimation/local-trend.ts';
import { nileModel, nileReadings } from './nile.ts';

// Model of Durbin and Koopman 2012, section 3.2, on the Nile; digits by KFAS 1.5.1.
describe('the local linear trend filter on the Nile', () => {
  const run = filterLocalTrend(nileReadings(), { ...nileModel, slopeVarPerDay: 10 });
  /** The published figures are one year ahead of the third and hundredth. */
  const after = (year: number) => run.trends[year - 2]!;

  it('has the exact diffuse likelihood', () => {
    expect(run.logLikelihood).toBeCloseTo(-631.3036710071, 8);
  });

  it('filters level and slope', () => {
    expect(after(3).level).toBeCloseTo(1001.255066, 5);
    expect(after(3).slopePerDay).toBeCloseTo(-78.512668, 5);
    expect(after(100).level).toBeCloseTo(781.215943, 5);
    expect(after(100).slopePerDay).toBeCloseTo(-6.952236, 5);
  });

  it('passes over a missing year as over two years at once', () => {
    const model = { ...nileModel, slopeVarPerDay: 10 };
    const missing = filterLocalTrend(
      nileReadings((year) => year === 50),
      model,
    );
    const spread = nileReadings().flatMap((reading, i) =>
      i === 49 ? [] : [{ ...reading, daysSince: i === 50 ? 2 : 1 }],
    );
    expect(filterLocalTrend(spread, model)).toEqual(missing);
  });

  it('goes on along the slope, ever less sure', () => {
    const model = { ...nileModel, slopeVarPerDay: 10 };
    const last = after(100);
    const ahead = trendAhead(last, 2.5, model);
    expect(ahead.level).toBeCloseTo(last.level + 2.5 * last.slopePerDay, 8);
    expect(ahead.levelVar).toBeGreaterThan(trendAhead(last, 2, model).levelVar);
  });
});

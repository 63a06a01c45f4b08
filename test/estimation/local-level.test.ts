import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitLocalLevel } from '../../src/estimation/fit-local-level.ts';
import {
  filterLocalLevel,
  foreseeReading,
  smoothLocalLevel,
  steadyGain,
} from '../../src/estimation/local-level.ts';
import { nile, nileModel, nileReadings } from './nile.ts';

// Durbin and Koopman 2012, chapter 2; digits by KFAS 1.5.1, statsmodels 0.13.5 and R 4.2.2, held to a
// unit of the last one given.
describe('the local level filter on the Nile', () => {
  const run = filterLocalLevel(nileReadings(), nileModel);

  it('reads the series as it is published', () => {
    expect(nile).toHaveLength(100);
    expect(nile.reduce((sum, flow) => sum + flow, 0)).toBe(91935);
  });

  it('has the exact diffuse likelihood', () => {
    expect(run.logLikelihood).toBeCloseTo(-632.5456251157, 8);
  });

  it('filters the first years', () => {
    const means = run.levels.slice(0, 4).map(({ mean }) => mean);
    expect(means[0]).toBe(1120);
    expect(means[1]).toBeCloseTo(1140.92784, 4);
    expect(means[2]).toBeCloseTo(1072.79853, 4);
    expect(means[3]).toBeCloseTo(1117.30896, 4);
    expect(run.levels[1]!.variance).toBeCloseTo(7899.7364, 4);
    expect(run.levels[2]!.variance).toBeCloseTo(5781.4699, 4);
  });

  it('is surprised by the first years as published', () => {
    const surprises = run.levels.slice(1, 4).map((level, i) => ({
      v: nile[i + 1]! - level.foreseen!.mean,
      f: level.foreseen!.variance + nileModel.readingVar,
    }));
    expect(surprises[0]!.v).toBeCloseTo(40, 8);
    expect(surprises[1]!.v).toBeCloseTo(-177.92784, 5);
    expect(surprises[2]!.v).toBeCloseTo(137.20147, 5);
    expect(surprises[0]!.f).toBeCloseTo(31667.1, 6);
    expect(surprises[1]!.f).toBeCloseTo(24467.836, 3);
    expect(surprises[2]!.f).toBeCloseTo(22349.57, 3);
  });

  it('settles at the steady state', () => {
    const last = run.levels.at(-1)!;
    expect(last.mean).toBeCloseTo(798.3702926, 6);
    expect(last.variance).toBeCloseTo(4032.15794, 4);
    expect(last.foreseen!.variance).toBeCloseTo(5501.25794, 4);
    expect(last.foreseen!.variance + nileModel.readingVar).toBeCloseTo(20600.258, 3);
    expect(steadyGain(nileModel, 1)).toBeCloseTo(0.267048, 6);
  });

  it('smooths the series', () => {
    const smoothed = smoothLocalLevel(run.levels);
    const at = (year: number) => smoothed[year - 1871]!;
    expect(at(1871).mean).toBeCloseTo(1111.66832, 4);
    expect(at(1872).mean).toBeCloseTo(1110.85767, 4);
    expect(at(1873).mean).toBeCloseTo(1105.26557, 4);
    expect(at(1874).mean).toBeCloseTo(1113.5156, 4);
    expect(at(1899).mean).toBeCloseTo(950.93009, 4);
    expect(at(1920).mean).toBeCloseTo(834.76326, 4);
    expect(at(1920).variance).toBeCloseTo(2326.757, 3);
  });

  it('foresees the years after the last', () => {
    const last = run.levels.at(-1)!;
    const sds = [1, 2, 3].map((years) => foreseeReading(last, years, nileModel).sd);
    expect(foreseeReading(last, 1, nileModel).mean).toBeCloseTo(798.3703, 4);
    expect(sds[0]).toBeCloseTo(143.528, 3);
    expect(sds[1]).toBeCloseTo(148.558, 3);
    expect(sds[2]).toBeCloseTo(153.423, 2);
  });

  it('carries the level over missing years', () => {
    const gaps = filterLocalLevel(
      nileReadings((year) => (year >= 21 && year <= 40) || (year >= 61 && year <= 80)),
      nileModel,
    );
    expect(gaps.logLikelihood).toBeCloseTo(-380.5870627753, 8);
    expect(gaps.levels[20]!.mean).toBeCloseTo(1026.141555071, 8);
    expect(gaps.levels[39]!.mean).toBeCloseTo(1026.141555071, 8);
    expect(gaps.levels[20]!.foreseen!.variance).toBeCloseTo(5501.29616, 4);
    expect(gaps.levels[39]!.foreseen!.variance).toBeCloseTo(33414.19616, 4);
    expect(gaps.levels[40]!.foreseen!.variance).toBeCloseTo(34883.29616, 4);
    expect(gaps.levels[60]!.mean).toBeCloseTo(834.2614178, 6);
    expect(gaps.levels[79]!.mean).toBeCloseTo(834.2614178, 6);
    expect(gaps.levels.at(-1)!.mean).toBeCloseTo(798.3151146, 6);
    const smoothed = smoothLocalLevel(gaps.levels);
    expect(smoothed[29]!.mean).toBeCloseTo(903.4211, 4);
    expect(smoothed[29]!.variance).toBeCloseTo(9715.006, 3);
  });

  it('finds the variances of greatest likelihood', () => {
    const fitted = fitLocalLevel(nileReadings())!;
    expect(fitted.readingVar).toBeCloseTo(15098.51, 0);
    expect(fitted.levelVarPerDay).toBeCloseTo(1469.18, 0);
    expect(filterLocalLevel(nileReadings(), fitted).logLikelihood).toBeCloseTo(-632.5456251, 6);
  });

  // Durbin and Koopman 2012, table 2.1; digits by independent computation, the table from memory.
  it.each([
    [1, -495.6851],
    [0.036, -492.529],
    [0.0745, -492.1046],
    [0.0974, -492.0707],
  ])('has the concentrated likelihood of the table at ratio %d', (ratio, expected) => {
    const unit = filterLocalLevel(nileReadings(), { readingVar: 1, levelVarPerDay: ratio });
    const squares = unit.levels
      .slice(1)
      .map((l, i) => (nile[i + 1]! - l.foreseen!.mean) ** 2 / (l.foreseen!.variance + 1));
    const logs = unit.levels.slice(1).map((l) => Math.log(l.foreseen!.variance + 1));
    const sum = (xs: readonly number[]) => xs.reduce((a, b) => a + b, 0);
    expect(-0.5 * (99 * Math.log(sum(squares) / 99) + sum(logs))).toBeCloseTo(expected, 3);
  });
});

describe('the local level filter', () => {
  it('treats two days at once as one day and one missing', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 3 }),
        (xs) => {
          const model = { readingVar: 0.4, levelVarPerDay: 0.1 };
          const wide = xs.map((value) => ({ daysSince: 2, value }));
          const split = xs.flatMap((value) => [
            { daysSince: 1, value: null },
            { daysSince: 1, value },
          ]);
          const one = filterLocalLevel(wide, model);
          const other = filterLocalLevel(split, model);
          expect(other.levels.at(-1)!.mean).toBeCloseTo(one.levels.at(-1)!.mean, 8);
          expect(other.logLikelihood).toBeCloseTo(one.logLikelihood, 6);
        },
      ),
    );
  });

  it('fits nothing to two values', () => {
    expect(fitLocalLevel(nileReadings().slice(0, 2))).toBeNull();
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { OutageCase } from '../../../src/science/oxygen/outage-case.ts';
import { outageSurvival } from '../../../src/science/oxygen/outage-survival.ts';
import { LONGEST_TOLD_HOURS } from '../../../src/science/oxygen/standing-water-survival.ts';
import { litre } from '../../../src/science/units/amount.ts';
import { kilopascal } from '../../../src/science/units/pressure.ts';
import { celsius } from '../../../src/science/units/temperature.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const buckets: OutageCase = {
  method: 'deep-water-culture',
  failure: 'power',
  sky: 'sun',
  waterL: litre(108),
  waterDepthM: 0.3,
  waterCelsius: celsius(22),
  airPressureKpa: kilopascal(101.3),
  plants: 6,
  crop: 'cucumber',
};

function limited(outage: OutageCase) {
  const survival = valueOf(outageSurvival(outage));
  if (survival.kind !== 'limited') throw new Error(`expected limits, found ${survival.kind}`);
  return survival;
}

describe('survival of an outage', () => {
  it('of a nutrient film in sun is 1 to 4 h, common practice', () => {
    const film = limited({ ...buckets, method: 'nutrient-film' });
    expect([film.lowHours, film.highHours]).toEqual([1, 4]);
    expect(film.by).toBe('drying');
  });

  it('of flood and drain with a medium is several hours to a day, common practice', () => {
    const bench = limited({ ...buckets, method: 'flood-and-drain' });
    expect(bench.lowHours).toBeGreaterThanOrEqual(3);
    expect(bench.highHours).toBe(24);
  });

  it('of a lettuce raft in its full water has 10 h and more within its bounds, common practice', () => {
    const raft = limited({ ...buckets, crop: 'lettuce', plants: 6, waterL: litre(108) });
    expect(raft.likelyHours).toBeGreaterThan(10);
  });

  it('of large cucumbers in small buckets is counted in few hours, since air is wanted all the time', () => {
    const row = limited(buckets);
    expect(row.lowHours).toBeCloseTo(0.5, 1);
    expect(row.likelyHours).toBeCloseTo(2.1, 1);
    expect(row.highHours).toBeCloseTo(16, 0);
    expect(row.assumptions.map(({ standing }) => standing)).toContain('from memory');
  });

  it('of jars is not affected, whatever fails', () => {
    for (const failure of ['power', 'circulation', 'aeration'] as const) {
      const jars = outageSurvival({ ...buckets, method: 'non-circulating', failure });
      expect(valueOf(jars)).toEqual({ kind: 'not-affected' });
    }
  });

  it('of a film with a dead air pump, or of air stones with a dead water pump, is not affected', () => {
    const film = outageSurvival({ ...buckets, method: 'nutrient-film', failure: 'aeration' });
    expect(valueOf(film)).toEqual({ kind: 'not-affected' });
    const stones = outageSurvival({ ...buckets, failure: 'circulation' });
    expect(valueOf(stones)).toEqual({ kind: 'not-affected' });
  });

  it('keeps its bounds in order, shrinks with warmth and ends at a week', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 35, noNaN: true }),
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.integer({ min: 1, max: 60 }),
        fc.constantFrom('lettuce', 'tomato', 'okra', null),
        (temperature, litres, plants, crop) => {
          const at = (degrees: number) =>
            limited({
              ...buckets,
              waterCelsius: celsius(degrees),
              waterL: litre(litres),
              plants,
              crop,
            });
          const here = at(temperature);
          expect(here.lowHours).toBeLessThanOrEqual(here.likelyHours);
          expect(here.likelyHours).toBeLessThanOrEqual(here.highHours);
          expect(here.highHours).toBeLessThanOrEqual(LONGEST_TOLD_HOURS);
          expect(at(temperature + 2).likelyHours).toBeLessThanOrEqual(here.likelyHours);
        },
      ),
    );
  });

  it('is outside when the water temperature is no such thing', () => {
    expect(outsideFrom(outageSurvival({ ...buckets, waterCelsius: celsius(72) })).found).toBe(72);
  });
});

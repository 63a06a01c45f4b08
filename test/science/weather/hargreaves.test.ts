import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { celsius, kelvinFromCelsius } from '../../../src/science/units/temperature.ts';
import { hargreavesEtoMmPerDay } from '../../../src/science/weather/hargreaves.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const lyon = {
  minCelsius: celsius(14.8),
  maxCelsius: celsius(26.6),
  latitudeDegrees: 45.72,
  dayOfYear: 196,
};

describe('Hargreaves reference evapotranspiration', () => {
  it('gives 5.0 mm/d for Lyon in July, FAO-56 Example 20 (from memory)', () => {
    expect(valueOf(hargreavesEtoMmPerDay(lyon))).toBeCloseTo(5.0, 1);
  });

  it('keeps its regression value of 5.033 mm/d, computed apart from the formula', () => {
    expect(valueOf(hargreavesEtoMmPerDay(lyon))).toBeCloseTo(5.033, 3);
  });

  it('is nothing on a day without any swing of temperature', () => {
    expect(valueOf(hargreavesEtoMmPerDay({ ...lyon, minCelsius: celsius(26.6) }))).toBe(0);
  });

  it('is never negative and finite anywhere on the globe, on any day', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.integer({ min: 1, max: 366 }),
        fc.double({ min: -17.8, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (latitudeDegrees, dayOfYear, low, share) => {
          const eto = valueOf(
            hargreavesEtoMmPerDay({
              latitudeDegrees,
              dayOfYear,
              minCelsius: celsius(low),
              maxCelsius: celsius(Math.min(50, low + share * (50 - low))),
            }),
          );
          expect(eto).toBeGreaterThanOrEqual(0);
          expect(eto).toBeLessThan(25);
        },
      ),
    );
  });

  it('says that the highest temperature is outside when it lies below the lowest', () => {
    const outcome = hargreavesEtoMmPerDay({ ...lyon, maxCelsius: celsius(10) });
    expect(outsideFrom(outcome)).toMatchObject({
      quantity: 'highest air temperature',
      found: 10,
      from: 14.8,
      to: 50,
    });
  });

  it('does not compile with kelvin, and kelvin forced in is outside', () => {
    const warm = kelvinFromCelsius(celsius(26.6));
    // @ts-expect-error kelvin is not degrees Celsius
    const outcome = hargreavesEtoMmPerDay({ ...lyon, maxCelsius: warm });
    expect(outsideFrom(outcome).quantity).toBe('highest air temperature');
  });

  it('says that a missing temperature is outside instead of giving a number that is none', () => {
    const outcome = hargreavesEtoMmPerDay({ ...lyon, minCelsius: celsius(Number.NaN) });
    expect(outsideFrom(outcome).quantity).toBe('lowest air temperature');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { celsius } from '../../../src/science/units/temperature.ts';
import {
  vapourPressureAtDewPointKpa,
  vapourPressureFromHighestHumidityKpa,
  vapourPressureFromHumidityExtremesKpa,
} from '../../../src/science/weather/actual-vapour-pressure.ts';
import { meanSaturationVapourPressureKpa } from '../../../src/science/weather/mean-saturation-vapour-pressure.ts';
import { saturationVapourPressureKpa } from '../../../src/science/weather/saturation-vapour-pressure.ts';
import {
  dayVapourPressureDeficitKpa,
  leafVapourPressureDeficitKpa,
  vapourPressureDeficitKpa,
} from '../../../src/science/weather/vapour-pressure-deficit.ts';
import { outsideFrom, valueOf } from '../holding.ts';

describe('saturation vapour pressure', () => {
  it.each([
    [24.5, 3.075],
    [15, 1.705],
  ])('at %d °C is %d kPa, FAO-56 Example 3', (temperature, pressureKpa) => {
    expect(valueOf(saturationVapourPressureKpa(celsius(temperature)))).toBeCloseTo(pressureKpa, 3);
  });

  it('agrees within 0.6 % with the Magnus formula of the WMO (Sonntag 1990, from memory) from 0 to 50 °C', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), (temperature) => {
        const magnusKpa = 0.6112 * Math.exp((17.62 * temperature) / (243.12 + temperature));
        const faoKpa = valueOf(saturationVapourPressureKpa(celsius(temperature)));
        expect(Math.abs(faoKpa / magnusKpa - 1)).toBeLessThan(0.006);
      }),
    );
  });

  it('says that 60 °C is outside', () => {
    expect(outsideFrom(saturationVapourPressureKpa(celsius(60)))).toMatchObject({
      quantity: 'air temperature',
      found: 60,
      to: 50,
    });
  });
});

describe('mean saturation vapour pressure of a day', () => {
  const day = { minCelsius: celsius(15), maxCelsius: celsius(24.5) };

  it('is 2.39 kPa between 15 and 24.5 °C, FAO-56 Example 3', () => {
    expect(valueOf(meanSaturationVapourPressureKpa(day))).toBeCloseTo(2.39, 2);
  });

  it('is above the pressure at the mean temperature, FAO-56 Example 3 (2.30 kPa)', () => {
    const atMean = valueOf(saturationVapourPressureKpa(celsius(19.75)));
    expect(atMean).toBeCloseTo(2.3, 2);
    expect(valueOf(meanSaturationVapourPressureKpa(day))).toBeGreaterThan(atMean);
  });
});

describe('actual vapour pressure', () => {
  const day = {
    minCelsius: celsius(18),
    maxCelsius: celsius(25),
    minHumidityPercent: 54,
    maxHumidityPercent: 82,
  };

  it('is 1.70 kPa from the extremes of FAO-56 Example 5', () => {
    expect(valueOf(vapourPressureFromHumidityExtremesKpa(day))).toBeCloseTo(1.7, 2);
  });

  it('is 1.69 kPa from the highest humidity alone, FAO-56 Example 5', () => {
    expect(valueOf(vapourPressureFromHighestHumidityKpa(day))).toBeCloseTo(1.69, 2);
  });

  it('is 1.78 kPa from the mean humidity, FAO-56 Example 5', () => {
    const saturation = valueOf(meanSaturationVapourPressureKpa(day));
    expect((saturation * (54 + 82)) / 200).toBeCloseTo(1.78, 2);
  });

  it('is 1.68 kPa at a dew point of 14.8 °C, FAO-56 Example 20', () => {
    expect(valueOf(vapourPressureAtDewPointKpa(celsius(14.8)))).toBeCloseTo(1.68, 2);
  });

  it('says that a humidity given as a fraction above one hundred, or below zero, is outside', () => {
    expect(
      outsideFrom(vapourPressureFromHumidityExtremesKpa({ ...day, maxHumidityPercent: 101 })).unit,
    ).toBe('%');
    expect(
      outsideFrom(vapourPressureFromHighestHumidityKpa({ ...day, maxHumidityPercent: -1 })).found,
    ).toBe(-1);
  });
});

describe('vapour pressure deficit', () => {
  it('is 0.91 kPa on the day of FAO-56 Example 6 (from memory)', () => {
    const es = valueOf(
      meanSaturationVapourPressureKpa({ minCelsius: celsius(18), maxCelsius: celsius(25) }),
    );
    const ea = valueOf(
      vapourPressureFromHumidityExtremesKpa({
        minCelsius: celsius(18),
        maxCelsius: celsius(25),
        minHumidityPercent: 54,
        maxHumidityPercent: 82,
      }),
    );
    expect(es - ea).toBeCloseTo(0.91, 2);
  });

  it('is 1.267 kPa at 25 °C and 60 %, and 0.909 kPa for a leaf two degrees cooler', () => {
    const air = { airCelsius: celsius(25), relativeHumidityPercent: 60 };
    expect(valueOf(vapourPressureDeficitKpa(air))).toBeCloseTo(1.267, 3);
    expect(valueOf(leafVapourPressureDeficitKpa({ ...air, leafCelsius: celsius(23) }))).toBeCloseTo(
      0.909,
      3,
    );
  });

  it('is half the swing of saturation when the night stands for the dew point', () => {
    const day = { minCelsius: celsius(15), maxCelsius: celsius(24.5) };
    expect(valueOf(dayVapourPressureDeficitKpa(day))).toBeCloseTo((3.075 - 1.705) / 2, 3);
  });

  it('of a leaf as warm as the air is that of the air', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (temperature, relativeHumidityPercent) => {
          const air = { airCelsius: celsius(temperature), relativeHumidityPercent };
          const ofLeaf = valueOf(
            leafVapourPressureDeficitKpa({ ...air, leafCelsius: celsius(temperature) }),
          );
          expect(ofLeaf).toBeCloseTo(valueOf(vapourPressureDeficitKpa(air)), 12);
        },
      ),
    );
  });
});

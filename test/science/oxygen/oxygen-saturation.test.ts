import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  oxygenSaturationAtOneAtmosphereMgPerL,
  oxygenSaturationMgPerL,
} from '../../../src/science/oxygen/oxygen-saturation.ts';
import { kilopascal, kilopascalFromMmHg } from '../../../src/science/units/pressure.ts';
import { celsius, kelvinFromCelsius } from '../../../src/science/units/temperature.ts';
import { standardAtmosphereKpa } from '../../../src/science/weather/standard-atmosphere.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const fresh = (temperature: number) =>
  valueOf(
    oxygenSaturationAtOneAtmosphereMgPerL({
      waterCelsius: celsius(temperature),
      salinityGPerKg: 0,
    }),
  );

/** EN 25814 / ISO 5814, table of fresh water at one atmosphere, 0 to 30 °C. */
const EN_25814 = [
  14.6, 14.2, 13.8, 13.5, 13.1, 12.8, 12.5, 12.2, 11.8, 11.6, 11.3, 11.0, 10.8, 10.5, 10.3, 10.1,
  9.87, 9.66, 9.47, 9.28, 9.09, 8.91, 8.74, 8.58, 8.42, 8.26, 8.11, 7.97, 7.83, 7.69, 7.56,
];

/** Weiss 1970, Deep-Sea Research 17:721, from memory: an older equation from other measurements. */
function weissMgPerL(temperature: number, salinityGPerKg: number): number {
  const hundreds = kelvinFromCelsius(celsius(temperature)) / 100;
  const lnMlPerL =
    -173.4292 +
    249.6339 / hundreds +
    143.3483 * Math.log(hundreds) -
    21.8492 * hundreds +
    salinityGPerKg * (-0.033096 + 0.014259 * hundreds - 0.0017 * hundreds ** 2);
  return Math.exp(lnMlPerL) * 1.429;
}

describe('oxygen saturation of fresh water at one atmosphere', () => {
  it.each([
    [0, 14.621],
    [5, 12.77],
    [10, 11.288],
    [15, 10.084],
    [20, 9.092],
    [25, 8.263],
    [30, 7.559],
    [35, 6.949],
    [40, 6.412],
  ])(
    'at %d °C is %d mg/L, table of Standard Methods 4500-O (from memory)',
    (temperature, mgPerL) => {
      expect(Math.abs(fresh(temperature) - mgPerL)).toBeLessThan(0.0011);
    },
  );

  it('follows the table of EN 25814 from 0 to 30 °C', () => {
    EN_25814.forEach((mgPerL, temperature) => {
      // One decimal is printed up to 15 °C, two from 16 °C.
      const tolerance = temperature < 16 ? 0.062 : 0.006;
      expect(Math.abs(fresh(temperature) - mgPerL), `${temperature} °C`).toBeLessThan(tolerance);
    });
  });

  it('is 10.08 at 15 °C, where one instrument manual misprints 10.2', () => {
    expect(fresh(15)).toBeCloseTo(10.08, 2);
  });

  it('agrees with the equation of Weiss within 0.6 % from 0 to 36 °C and 0 to 40 g/kg', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 36, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (temperature, salinityGPerKg) => {
          const ours = valueOf(
            oxygenSaturationAtOneAtmosphereMgPerL({
              waterCelsius: celsius(temperature),
              salinityGPerKg,
            }),
          );
          expect(Math.abs(ours / weissMgPerL(temperature, salinityGPerKg) - 1)).toBeLessThan(0.006);
        },
      ),
    );
  });

  it('falls with warmth and with salt', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 39, noNaN: true }),
        fc.double({ min: 0, max: 39, noNaN: true }),
        (temperature, salinityGPerKg) => {
          const at = (degrees: number, salt: number) =>
            valueOf(
              oxygenSaturationAtOneAtmosphereMgPerL({
                waterCelsius: celsius(degrees),
                salinityGPerKg: salt,
              }),
            );
          const here = at(temperature, salinityGPerKg);
          expect(at(temperature + 1, salinityGPerKg)).toBeLessThan(here);
          expect(at(temperature, salinityGPerKg + 1)).toBeLessThan(here);
        },
      ),
    );
  });

  it('loses only 0.107 mg/L to the 2 g/kg of a nutrient solution at 20 °C, regression value', () => {
    const salted = oxygenSaturationAtOneAtmosphereMgPerL({
      waterCelsius: celsius(20),
      salinityGPerKg: 2,
    });
    expect(fresh(20) - valueOf(salted)).toBeCloseTo(0.107, 3);
  });

  it('says that boiling water is outside', () => {
    const outcome = oxygenSaturationAtOneAtmosphereMgPerL({
      waterCelsius: celsius(100),
      salinityGPerKg: 0,
    });
    expect(outsideFrom(outcome)).toMatchObject({ quantity: 'water temperature', to: 40 });
  });
});

describe('oxygen saturation under another air pressure', () => {
  const under = (temperature: number, mmHg: number) =>
    valueOf(
      oxygenSaturationMgPerL({
        waterCelsius: celsius(temperature),
        salinityGPerKg: 0,
        airPressureKpa: kilopascalFromMmHg(mmHg),
      }),
    );

  it('at one atmosphere is that of one atmosphere', () => {
    expect(under(20, 760)).toBeCloseTo(fresh(20), 12);
  });

  it.each([
    [20, 725, 8.7],
    [20, 700, 8.4],
    [20, 675, 8.1],
    [20, 650, 7.8],
    [20, 625, 7.5],
    [10, 700, 10.4],
    [10, 650, 9.7],
  ])(
    'at %d °C and %d mmHg is %d mg/L, table of an instrument manual (±0.1)',
    (temperature, mmHg, mgPerL) => {
      expect(Math.abs(under(temperature, mmHg) - mgPerL)).toBeLessThan(0.1);
    },
  );

  it.each([
    [0, 9.092],
    [500, 8.554],
    [1000, 8.041],
    [1500, 7.553],
    [2000, 7.088],
  ])('at 20 °C and %d m is %d mg/L, regression value', (elevationM, mgPerL) => {
    const saturation = oxygenSaturationMgPerL({
      waterCelsius: celsius(20),
      salinityGPerKg: 0,
      airPressureKpa: valueOf(standardAtmosphereKpa(elevationM)),
    });
    expect(valueOf(saturation)).toBeCloseTo(mgPerL, 2);
  });

  it('is close to the share of the dry air, Dalton and Henry', () => {
    fc.assert(
      fc.property(fc.double({ min: 500, max: 800, noNaN: true }), (mmHg) => {
        const vapourMmHg = 17.5;
        const share = (mmHg - vapourMmHg) / (760 - vapourMmHg);
        expect(Math.abs(under(20, mmHg) / (fresh(20) * share) - 1)).toBeLessThan(0.002);
      }),
    );
  });

  it('says that a pressure given in hectopascal is outside', () => {
    const outcome = oxygenSaturationMgPerL({
      waterCelsius: celsius(20),
      salinityGPerKg: 0,
      airPressureKpa: kilopascal(1013),
    });
    expect(outsideFrom(outcome)).toMatchObject({ quantity: 'air pressure', unit: 'kPa' });
  });
});

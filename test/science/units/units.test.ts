import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  atmosphereFromKilopascal,
  kilopascal,
  kilopascalFromHectopascal,
  kilopascalFromMmHg,
} from '../../../src/science/units/pressure.ts';
import { meanWattPerM2, megajoulePerM2Day } from '../../../src/science/units/radiation.ts';
import {
  celsius,
  celsiusFromFahrenheit,
  kelvinFromCelsius,
} from '../../../src/science/units/temperature.ts';
import { evaporationEquivalentMmPerDay } from '../../../src/science/units/water-depth.ts';

describe('units', () => {
  it('turn 25 °C into 298.15 K and 68 °F into 20 °C', () => {
    expect(kelvinFromCelsius(celsius(25))).toBe(298.15);
    expect(celsiusFromFahrenheit(68)).toBe(20);
    expect(celsiusFromFahrenheit(-40)).toBe(-40);
  });

  it('turn one standard atmosphere into itself by every scale', () => {
    expect(kilopascalFromMmHg(760)).toBe(101.325);
    expect(kilopascalFromHectopascal(1013.25)).toBe(101.325);
    expect(atmosphereFromKilopascal(kilopascal(101.325))).toBe(1);
  });

  it('turn 1 MJ/m²/d into 11.574 W/m², FAO-56 Table 3', () => {
    expect(meanWattPerM2(megajoulePerM2Day(1))).toBeCloseTo(11.574, 3);
  });

  it('turn 12 MJ/m²/d into 4.9 mm/d of water, FAO-56 Example 1 (from memory)', () => {
    expect(evaporationEquivalentMmPerDay(megajoulePerM2Day(12))).toBeCloseTo(4.9, 1);
  });

  it('keep the order of temperatures from scale to scale', () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 60, noNaN: true }), (low) => {
        const warmer = celsius(low + 1);
        expect(kelvinFromCelsius(warmer)).toBeGreaterThan(kelvinFromCelsius(celsius(low)));
      }),
    );
  });
});

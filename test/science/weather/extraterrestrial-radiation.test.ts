import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daylightHours } from '../../../src/science/weather/daylight-hours.ts';
import { extraterrestrialRadiationMjPerM2Day } from '../../../src/science/weather/extraterrestrial-radiation.ts';
import { sunGeometry } from '../../../src/science/weather/sun-geometry.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const south20September = { latitudeDegrees: -20, dayOfYear: 246 };

/** Integrates the sine of the sun's elevation over the day by small steps: a second way to Ra. */
function radiationByStepsMjPerM2Day(latitudeDegrees: number, dayOfYear: number): number {
  const sun = valueOf(sunGeometry({ latitudeDegrees, dayOfYear }));
  const steps = 20_000;
  let sum = 0;
  for (let step = 0; step < steps; step += 1) {
    const hourAngle = ((step + 0.5) / steps) * 2 * Math.PI - Math.PI;
    const elevationSine =
      Math.sin(sun.latitudeRadians) * Math.sin(sun.declinationRadians) +
      Math.cos(sun.latitudeRadians) * Math.cos(sun.declinationRadians) * Math.cos(hourAngle);
    sum += Math.max(0, elevationSine);
  }
  return (sum / steps) * 1440 * 0.082 * sun.inverseRelativeDistance;
}

describe('the sun over a latitude', () => {
  it('stands as FAO-56 Example 8 says at 20° south on 3 September', () => {
    const sun = valueOf(sunGeometry(south20September));
    expect(sun.inverseRelativeDistance).toBeCloseTo(0.985, 3);
    expect(sun.declinationRadians).toBeCloseTo(0.12, 3);
    expect(sun.sunsetHourAngleRadians).toBeCloseTo(1.527, 3);
  });

  it('sends 32.2 MJ/m²/d there, FAO-56 Example 8', () => {
    expect(valueOf(extraterrestrialRadiationMjPerM2Day(south20September))).toBeCloseTo(32.2, 1);
  });

  it('sends 41.088 MJ/m²/d to Uccle on 6 July, worked chain of FAO-56 Example 18', () => {
    const uccle = { latitudeDegrees: 50.8, dayOfYear: 187 };
    expect(valueOf(extraterrestrialRadiationMjPerM2Day(uccle))).toBeCloseTo(41.08838, 4);
  });

  it('sends 38.06 MJ/m²/d to Bangkok in April, FAO-56 Example 17', () => {
    const bangkok = { latitudeDegrees: 13 + 44 / 60, dayOfYear: 105 };
    expect(valueOf(extraterrestrialRadiationMjPerM2Day(bangkok))).toBeCloseTo(38.06, 2);
  });

  it('agrees with the day summed in small steps, at any latitude and day', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.integer({ min: 1, max: 366 }),
        (latitudeDegrees, dayOfYear) => {
          const byFormula = valueOf(
            extraterrestrialRadiationMjPerM2Day({ latitudeDegrees, dayOfYear }),
          );
          const bySteps = radiationByStepsMjPerM2Day(latitudeDegrees, dayOfYear);
          expect(Math.abs(byFormula - bySteps)).toBeLessThan(0.005);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('gives nothing in polar night and a whole day of light in polar day', () => {
    const winter = { latitudeDegrees: 80, dayOfYear: 355 };
    expect(valueOf(extraterrestrialRadiationMjPerM2Day(winter))).toBe(0);
    expect(valueOf(daylightHours(winter))).toBe(0);
    expect(valueOf(daylightHours({ latitudeDegrees: 80, dayOfYear: 172 }))).toBe(24);
  });

  it('stays finite at the poles themselves', () => {
    const pole = { latitudeDegrees: 90, dayOfYear: 172 };
    expect(valueOf(extraterrestrialRadiationMjPerM2Day(pole))).toBeGreaterThan(40);
  });

  it('says that a latitude of 120° or a day 0 is outside', () => {
    const far = extraterrestrialRadiationMjPerM2Day({ latitudeDegrees: 120, dayOfYear: 1 });
    expect(outsideFrom(far)).toEqual({
      quantity: 'latitude',
      unit: '° north',
      found: 120,
      from: -90,
      to: 90,
    });
    expect(outsideFrom(daylightHours({ latitudeDegrees: 0, dayOfYear: 0 })).found).toBe(0);
  });
});

describe('daylight hours', () => {
  it('are 11.7 h at 20° south on 3 September, FAO-56 Example 9', () => {
    expect(valueOf(daylightHours(south20September))).toBeCloseTo(11.7, 1);
  });

  it('are 16.1 h at Uccle on 6 July, FAO-56 Example 18', () => {
    expect(valueOf(daylightHours({ latitudeDegrees: 50.8, dayOfYear: 187 }))).toBeCloseTo(16.1, 1);
  });

  it('of the two hemispheres add up to a whole day', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 90, noNaN: true }),
        fc.integer({ min: 1, max: 366 }),
        (latitudeDegrees, dayOfYear) => {
          const north = valueOf(daylightHours({ latitudeDegrees, dayOfYear }));
          const south = valueOf(daylightHours({ latitudeDegrees: -latitudeDegrees, dayOfYear }));
          expect(north + south).toBeCloseTo(24, 9);
        },
      ),
    );
  });
});

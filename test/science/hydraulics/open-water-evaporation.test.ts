import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  openWaterEvaporationMmPerDay,
  QUIET_TANK_ACTIVITY,
} from '../../../src/science/hydraulics/open-water-evaporation.ts';
import { celsius } from '../../../src/science/units/temperature.ts';
import { saturationVapourPressureKpa } from '../../../src/science/weather/saturation-vapour-pressure.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const still = {
  waterCelsius: celsius(22),
  airCelsius: celsius(24),
  relativeHumidityPercent: 60,
  airSpeedMPerS: 0,
  openShare: 1,
  activity: 1,
};
const lost = (surface: typeof still) => valueOf(openWaterEvaporationMmPerDay(surface));

/** kg of vapour in a kg of dry air at one atmosphere. */
const humidityRatio = (vapourKpa: number) => (0.622 * vapourKpa) / (101.325 - vapourKpa);

describe('water lost from an open surface', () => {
  it('of 22 °C under air of 24 °C and 60 % keeps its regression values: 2.68, and 3.15 mm/d with 0.2 m/s', () => {
    expect(lost(still)).toBeCloseTo(2.68, 2);
    expect(lost({ ...still, airSpeedMPerS: 0.2 })).toBeCloseTo(3.15, 2);
  });

  it('uses the constants of the mmHg form 42.6 + 37.6 v of the same law', () => {
    // kJ/h/m²/mmHg from kW/m²/kPa.
    const scale = 3600 * 0.1333224;
    expect(Math.abs(0.089 * scale - 42.6)).toBeLessThan(0.2);
    expect(Math.abs(0.0782 * scale - 37.6)).toBeLessThan(0.2);
  });

  it('is a quarter below the engineering form (25 + 19 v)(xs − x), which loses 0.040 kg/s from 500 m² at 0.5 m/s', () => {
    const engineeringKgPerS = ((25 + 19 * 0.5) * 500 * (0.019826 - 0.0115)) / 3600;
    expect(engineeringKgPerS).toBeCloseTo(0.04, 3);
    const atWater = valueOf(saturationVapourPressureKpa(celsius(22)));
    const inAir = 0.6 * valueOf(saturationVapourPressureKpa(celsius(24)));
    const engineering = 24 * 25 * (humidityRatio(atWater) - humidityRatio(inAir));
    expect(engineering).toBeCloseTo(3.29, 1);
    expect(lost(still) / engineering).toBeGreaterThan(0.75);
    expect(lost(still) / engineering).toBeLessThan(0.9);
  });

  it('is halved for a quiet tank and falls with the lid', () => {
    const quiet = lost({ ...still, activity: QUIET_TANK_ACTIVITY });
    expect(quiet).toBeCloseTo(lost(still) / 2, 12);
    expect(lost({ ...still, openShare: 0.1 })).toBeCloseTo(lost(still) / 10, 12);
    expect(lost({ ...still, openShare: 0 })).toBe(0);
  });

  it('is nothing in air that is moister than the water', () => {
    expect(lost({ ...still, waterCelsius: celsius(12), relativeHumidityPercent: 95 })).toBe(0);
  });

  it('grows with the warmth of the water, dry air and wind', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 40, noNaN: true }),
        fc.double({ min: 10, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        (temperature, humidity, wind) => {
          const here = {
            ...still,
            waterCelsius: celsius(temperature),
            relativeHumidityPercent: humidity,
            airSpeedMPerS: wind,
          };
          expect(lost({ ...here, waterCelsius: celsius(temperature + 1) })).toBeGreaterThan(
            lost(here),
          );
          expect(lost({ ...here, relativeHumidityPercent: humidity - 5 })).toBeGreaterThan(
            lost(here),
          );
          expect(lost({ ...here, airSpeedMPerS: wind + 0.5 })).toBeGreaterThan(lost(here));
        },
      ),
    );
  });

  it('is outside for a storm', () => {
    const storm = openWaterEvaporationMmPerDay({ ...still, airSpeedMPerS: 30 });
    expect(outsideFrom(storm).quantity).toBe('air speed');
  });
});

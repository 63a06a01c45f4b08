import { describe, expect, it } from 'vitest';
import { chargeSums, ionicStrengthMolPerL } from '../../src/science/conductivity/ionic-strength.ts';
import { conductivityAt25MsPerCm } from '../../src/science/conductivity/linear-compensation.ts';
import { hazenWilliamsLossM } from '../../src/science/hydraulics/hazen-williams.ts';
import { pumpFlowThroughHoseLPerH } from '../../src/science/hydraulics/pump-through-hose.ts';
import { oxygenSaturationMgPerL } from '../../src/science/oxygen/oxygen-saturation.ts';
import { phosphateAlkaliMeqPerL } from '../../src/science/ph/proton-yield.ts';
import {
  cubicMetrePerSecond,
  litre,
  litreFromMillilitre,
  litreFromUsGallon,
  litrePerHour,
  millilitre,
  millilitreFromLitre,
} from '../../src/science/units/amount.ts';
import { millimolePerL } from '../../src/science/units/concentration.ts';
import { millisiemensPerCm } from '../../src/science/units/conductivity.ts';
import { kilopascal, kilopascalFromMmHg } from '../../src/science/units/pressure.ts';
import { megajoulePerM2Day } from '../../src/science/units/radiation.ts';
import { celsius } from '../../src/science/units/temperature.ts';
import { penmanMonteithEtoMmPerDay } from '../../src/science/weather/penman-monteith.ts';
import { saturationSlopeKpaPerCelsius } from '../../src/science/weather/saturation-slope.ts';
import {
  clearSkyRadiationMjPerM2Day,
  solarRadiationFromSunshineMjPerM2Day,
} from '../../src/science/weather/solar-radiation.ts';
import { standardAtmosphereKpa } from '../../src/science/weather/standard-atmosphere.ts';
import { valueOf } from './holding.ts';

/** Examples in docstrings that no other test repeats with the same figures. */
describe('examples in the docstrings', () => {
  it('of amounts are right', () => {
    expect(litreFromMillilitre(millilitre(250))).toBe(0.25);
    expect(millilitreFromLitre(litre(0.25))).toBe(250);
    expect(litreFromUsGallon(10)).toBeCloseTo(37.85, 2);
    expect(cubicMetrePerSecond(litrePerHour(3600))).toBeCloseTo(0.001, 12);
  });

  it('of weather are right', () => {
    expect(valueOf(standardAtmosphereKpa(1000))).toBeCloseTo(89.87, 2);
    expect(valueOf(saturationSlopeKpaPerCelsius(celsius(16.9)))).toBeCloseTo(0.122, 3);
    const clear = clearSkyRadiationMjPerM2Day({
      elevationM: 100,
      extraterrestrialMjPerM2Day: megajoulePerM2Day(41.08838),
    });
    expect(valueOf(clear)).toBeCloseTo(30.898, 3);
    const sunny = solarRadiationFromSunshineMjPerM2Day({
      sunshineHours: 7.1,
      daylightHours: 10.9,
      extraterrestrialMjPerM2Day: megajoulePerM2Day(25.1),
    });
    expect(valueOf(sunny)).toBeCloseTo(14.45, 2);
    const eto = penmanMonteithEtoMmPerDay({
      meanCelsius: celsius(16.9),
      netRadiationMjPerM2Day: megajoulePerM2Day(13.28),
      soilHeatMjPerM2Day: megajoulePerM2Day(0),
      windAtTwoMetresMPerS: 2.078,
      saturationVapourPressureKpa: kilopascal(1.997),
      actualVapourPressureKpa: kilopascal(1.409),
      airPressureKpa: kilopascal(100.1),
    });
    expect(valueOf(eto)).toBeCloseTo(3.88, 2);
  });

  it('of oxygen are right', () => {
    const saturation = oxygenSaturationMgPerL({
      waterCelsius: celsius(20),
      salinityGPerKg: 0,
      airPressureKpa: kilopascalFromMmHg(700),
    });
    expect(valueOf(saturation)).toBeCloseTo(8.36, 2);
  });

  it('of conductivity are right', () => {
    const at25 = conductivityAt25MsPerCm({
      readingMsPerCm: millisiemensPerCm(1.278),
      waterCelsius: celsius(20),
    });
    expect(valueOf(at25)).toBeCloseTo(1.415, 3);
    const chloride = { K: millimolePerL(10), Cl: millimolePerL(10) };
    expect(ionicStrengthMolPerL(chloride)).toBeCloseTo(0.01, 12);
    const nitrate = { Ca: millimolePerL(5), NO3: millimolePerL(10) };
    expect(chargeSums(nitrate)).toEqual({ cationsMeqPerL: 10, anionsMeqPerL: 10 });
  });

  it('of pH are right', () => {
    const alkali = phosphateAlkaliMeqPerL({
      phosphateMmolPerL: millimolePerL(1),
      presentPh: 5.4,
      targetPh: 6.2,
    });
    expect(valueOf(alkali)).toBeCloseTo(0.076, 3);
  });

  it('of hydraulics are right', () => {
    const loss = hazenWilliamsLossM({
      flowLPerH: litrePerHour(2271.25),
      lengthM: 30.48,
      diameterMm: 26.64,
    });
    expect(valueOf(loss)).toBeCloseTo(1.67, 2);
    const flow = pumpFlowThroughHoseLPerH({
      pump: { ratedLPerH: litrePerHour(3000), maxHeadM: 3 },
      liftM: 1,
      hose: { lengthM: 4, diameterMm: 19 },
      waterCelsius: celsius(20),
    });
    expect(Math.abs(valueOf(flow) - 1460)).toBeLessThan(5);
  });
});

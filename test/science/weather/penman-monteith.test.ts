import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Kilopascal, kilopascal } from '../../../src/science/units/pressure.ts';
import { megajoulePerM2Day } from '../../../src/science/units/radiation.ts';
import { celsius } from '../../../src/science/units/temperature.ts';
import { vapourPressureFromHumidityExtremesKpa } from '../../../src/science/weather/actual-vapour-pressure.ts';
import { atmosphericPressureKpa } from '../../../src/science/weather/atmospheric-pressure.ts';
import { daylightHours } from '../../../src/science/weather/daylight-hours.ts';
import { extraterrestrialRadiationMjPerM2Day } from '../../../src/science/weather/extraterrestrial-radiation.ts';
import { meanSaturationVapourPressureKpa } from '../../../src/science/weather/mean-saturation-vapour-pressure.ts';
import {
  netLongwaveMjPerM2Day,
  netShortwaveMjPerM2Day,
} from '../../../src/science/weather/net-radiation.ts';
import { penmanMonteithEtoMmPerDay } from '../../../src/science/weather/penman-monteith.ts';
import { psychrometricConstantKpaPerCelsius } from '../../../src/science/weather/psychrometric-constant.ts';
import { saturationSlopeKpaPerCelsius } from '../../../src/science/weather/saturation-slope.ts';
import { saturationVapourPressureKpa } from '../../../src/science/weather/saturation-vapour-pressure.ts';
import {
  clearSkyRadiationMjPerM2Day,
  solarRadiationFromSunshineMjPerM2Day,
  solarRadiationFromTemperaturesMjPerM2Day,
} from '../../../src/science/weather/solar-radiation.ts';
import { windAtTwoMetresMPerS } from '../../../src/science/weather/wind-at-two-metres.ts';
import { outsideFrom, valueOf } from '../holding.ts';

/** The whole chain of the FAO-56 examples, from what a station writes down. */
function chain(day: {
  readonly latitudeDegrees: number;
  readonly dayOfYear: number;
  readonly elevationM: number;
  readonly min: number;
  readonly max: number;
  readonly actualKpa: Kilopascal;
  readonly windAtTwoMetres: number;
  readonly solar: { readonly sunshineHours: number } | 'from temperatures';
  readonly soilHeat: number;
}) {
  const span = { minCelsius: celsius(day.min), maxCelsius: celsius(day.max) };
  const extraterrestrial = valueOf(extraterrestrialRadiationMjPerM2Day(day));
  const daylight = valueOf(daylightHours(day));
  const solar = valueOf(
    day.solar === 'from temperatures'
      ? solarRadiationFromTemperaturesMjPerM2Day({
          ...span,
          site: 'interior',
          extraterrestrialMjPerM2Day: extraterrestrial,
        })
      : solarRadiationFromSunshineMjPerM2Day({
          ...day.solar,
          daylightHours: daylight,
          extraterrestrialMjPerM2Day: extraterrestrial,
        }),
  );
  const clearSky = valueOf(
    clearSkyRadiationMjPerM2Day({ ...day, extraterrestrialMjPerM2Day: extraterrestrial }),
  );
  const shortwave = netShortwaveMjPerM2Day(solar);
  const longwave = valueOf(
    netLongwaveMjPerM2Day({
      ...span,
      vapourPressureKpa: day.actualKpa,
      solarMjPerM2Day: solar,
      clearSkyMjPerM2Day: clearSky,
    }),
  );
  const saturation = valueOf(meanSaturationVapourPressureKpa(span));
  const net = megajoulePerM2Day(shortwave - longwave);
  const eto = valueOf(
    penmanMonteithEtoMmPerDay({
      meanCelsius: celsius((day.min + day.max) / 2),
      netRadiationMjPerM2Day: net,
      soilHeatMjPerM2Day: megajoulePerM2Day(day.soilHeat),
      windAtTwoMetresMPerS: day.windAtTwoMetres,
      saturationVapourPressureKpa: saturation,
      actualVapourPressureKpa: day.actualKpa,
      airPressureKpa: valueOf(atmosphericPressureKpa(day.elevationM)),
    }),
  );
  return { extraterrestrial, daylight, solar, clearSky, shortwave, longwave, net, saturation, eto };
}

describe('air', () => {
  it('weighs 81.8 kPa at 1800 m, with a psychrometric constant of 0.054, FAO-56 Example 2', () => {
    const pressure = valueOf(atmosphericPressureKpa(1800));
    expect(pressure).toBeCloseTo(81.8, 1);
    expect(valueOf(psychrometricConstantKpaPerCelsius(pressure))).toBeCloseTo(0.054, 3);
  });

  it('weighs the same by FAO-56 as by the international standard atmosphere, within 1 %', () => {
    for (let elevationM = 0; elevationM <= 4000; elevationM += 250) {
      const standardKpa = 101.325 * (1 - 2.25577e-5 * elevationM) ** 5.25588;
      const faoKpa = valueOf(atmosphericPressureKpa(elevationM));
      expect(Math.abs(faoKpa / standardKpa - 1)).toBeLessThan(0.01);
    }
  });

  it('says that a pressure in hectopascal is outside', () => {
    expect(outsideFrom(psychrometricConstantKpaPerCelsius(kilopascal(1013))).unit).toBe('kPa');
    expect(outsideFrom(atmosphericPressureKpa(9000)).quantity).toBe('elevation');
  });

  it('holds more vapour with warmth by the slope, which is the derivative of the curve', () => {
    fc.assert(
      fc.property(fc.double({ min: -19, max: 49, noNaN: true }), (temperature) => {
        const step = 1e-3;
        const above = valueOf(saturationVapourPressureKpa(celsius(temperature + step)));
        const below = valueOf(saturationVapourPressureKpa(celsius(temperature - step)));
        const slope = valueOf(saturationSlopeKpaPerCelsius(celsius(temperature)));
        expect(Math.abs(slope / ((above - below) / (2 * step)) - 1)).toBeLessThan(1e-4);
      }),
    );
  });
});

describe('wind at two metres', () => {
  it('is 2.4 m/s for 3.2 m/s at ten metres, FAO-56 Example 14', () => {
    expect(valueOf(windAtTwoMetresMPerS({ windMPerS: 3.2, heightM: 10 }))).toBeCloseTo(2.4, 1);
  });

  it('is about that of a gauge that stands there, and the power law of 1/7 is near', () => {
    const atTwo = valueOf(windAtTwoMetresMPerS({ windMPerS: 1, heightM: 2 }));
    expect(atTwo).toBeCloseTo(1, 2);
    const fromTen = valueOf(windAtTwoMetresMPerS({ windMPerS: 1, heightM: 10 }));
    expect(Math.abs(fromTen - (2 / 10) ** (1 / 7))).toBeLessThan(0.06);
  });

  it('is outside for a gauge in the grass', () => {
    const outcome = windAtTwoMetresMPerS({ windMPerS: 3, heightM: 0.05 });
    expect(outsideFrom(outcome).quantity).toBe('height of the wind gauge');
  });
});

describe('solar radiation', () => {
  it('is 14.5 MJ/m²/d for 7.1 of 10.9 h of sun in Rio in May, FAO-56 Example 10', () => {
    const rio = { latitudeDegrees: -(22 + 54 / 60), dayOfYear: 135 };
    const extraterrestrialMjPerM2Day = valueOf(extraterrestrialRadiationMjPerM2Day(rio));
    expect(extraterrestrialMjPerM2Day).toBeCloseTo(25.1, 1);
    const daylight = valueOf(daylightHours(rio));
    expect(daylight).toBeCloseTo(10.9, 1);
    const solar = solarRadiationFromSunshineMjPerM2Day({
      sunshineHours: 7.1,
      daylightHours: daylight,
      extraterrestrialMjPerM2Day,
    });
    expect(valueOf(solar)).toBeCloseTo(14.5, 1);
  });

  it('is 22.3 MJ/m²/d from 14.8 to 26.6 °C, FAO-56 Example 15', () => {
    const solar = solarRadiationFromTemperaturesMjPerM2Day({
      minCelsius: celsius(14.8),
      maxCelsius: celsius(26.6),
      site: 'interior',
      extraterrestrialMjPerM2Day: megajoulePerM2Day(40.6),
    });
    expect(valueOf(solar)).toBeCloseTo(22.3, 1);
  });

  it('is that of a clear sky when the sun shone all day at sea level', () => {
    const extraterrestrialMjPerM2Day = megajoulePerM2Day(40);
    const all = solarRadiationFromSunshineMjPerM2Day({
      sunshineHours: 12,
      daylightHours: 12,
      extraterrestrialMjPerM2Day,
    });
    const clear = clearSkyRadiationMjPerM2Day({ elevationM: 0, extraterrestrialMjPerM2Day });
    expect(valueOf(all)).toBe(valueOf(clear));
  });

  it('is outside when the sun shone longer than the day', () => {
    const outcome = solarRadiationFromSunshineMjPerM2Day({
      sunshineHours: 13,
      daylightHours: 12,
      extraterrestrialMjPerM2Day: megajoulePerM2Day(30),
    });
    expect(outsideFrom(outcome)).toMatchObject({ quantity: 'sunshine', found: 13, to: 12 });
  });
});

describe('net longwave radiation', () => {
  const rio = {
    minCelsius: celsius(19.1),
    maxCelsius: celsius(25.1),
    vapourPressureKpa: kilopascal(2.1),
    solarMjPerM2Day: megajoulePerM2Day(14.5),
    clearSkyMjPerM2Day: megajoulePerM2Day(18.8),
  };

  it('is 3.5 MJ/m²/d in Rio in May, FAO-56 Example 11', () => {
    expect(valueOf(netLongwaveMjPerM2Day(rio))).toBeCloseTo(3.5, 1);
  });

  it('grows no more once the sky is clear', () => {
    const clear = { ...rio, solarMjPerM2Day: rio.clearSkyMjPerM2Day };
    const clearer = { ...rio, solarMjPerM2Day: megajoulePerM2Day(25) };
    expect(valueOf(netLongwaveMjPerM2Day(clearer))).toBe(valueOf(netLongwaveMjPerM2Day(clear)));
  });

  it('is outside in polar night, where cloudiness has no measure', () => {
    const night = { ...rio, clearSkyMjPerM2Day: megajoulePerM2Day(0) };
    expect(outsideFrom(netLongwaveMjPerM2Day(night)).quantity).toBe('clear-sky radiation');
  });
});

describe('Penman-Monteith reference evapotranspiration', () => {
  it('follows FAO-56 Example 18, Uccle on 6 July, step by step', () => {
    const actualKpa = valueOf(
      vapourPressureFromHumidityExtremesKpa({
        minCelsius: celsius(12.3),
        maxCelsius: celsius(21.5),
        minHumidityPercent: 63,
        maxHumidityPercent: 84,
      }),
    );
    const windAtTwoMetres = valueOf(windAtTwoMetresMPerS({ windMPerS: 2.78, heightM: 10 }));
    const uccle = chain({
      latitudeDegrees: 50.8,
      dayOfYear: 187,
      elevationM: 100,
      min: 12.3,
      max: 21.5,
      actualKpa,
      windAtTwoMetres,
      solar: { sunshineHours: 9.25 },
      soilHeat: 0,
    });
    // Worked by a second program (the evaporation code of a state water survey).
    expect(windAtTwoMetres).toBeCloseTo(2.079304, 5);
    expect(actualKpa).toBeCloseTo(1.408624, 4);
    expect(uccle.saturation - actualKpa).toBeCloseTo(0.5888618, 4);
    expect(uccle.extraterrestrial).toBeCloseTo(41.08838, 4);
    expect(uccle.clearSky).toBeCloseTo(30.89846, 4);
    expect(uccle.longwave).toBeCloseTo(3.711241, 2);
    expect(uccle.net).toBeCloseTo(13.28266, 2);
    expect(valueOf(saturationSlopeKpaPerCelsius(celsius(16.9)))).toBeCloseTo(0.1221127, 5);
    const gamma = psychrometricConstantKpaPerCelsius(valueOf(atmosphericPressureKpa(100)));
    expect(valueOf(gamma)).toBeCloseTo(0.06655628, 4);
    // FAO-56 prints 22.07, 17.0 and 3.9.
    expect(uccle.solar).toBeCloseTo(22.07, 2);
    expect(uccle.shortwave).toBeCloseTo(17, 1);
    expect(uccle.eto).toBeCloseTo(3.88, 2);
  });

  it('gives 5.72 mm/d for Bangkok in April, FAO-56 Example 17', () => {
    const bangkok = chain({
      latitudeDegrees: 13 + 44 / 60,
      dayOfYear: 105,
      elevationM: 2,
      min: 25.6,
      max: 34.8,
      actualKpa: kilopascal(2.85),
      windAtTwoMetres: 2,
      solar: { sunshineHours: 8.5 },
      soilHeat: 0.14,
    });
    expect(bangkok.daylight).toBeCloseTo(12.31, 2);
    expect(bangkok.solar).toBeCloseTo(22.65, 2);
    expect(bangkok.net).toBeCloseTo(14.33, 2);
    expect(bangkok.eto).toBeCloseTo(5.72, 2);
  });

  it('gives 4.56 mm/d for Lyon in July from temperatures alone, FAO-56 Example 20 (from memory: 4.6)', () => {
    const lyon = chain({
      latitudeDegrees: 45 + 43 / 60,
      dayOfYear: 196,
      elevationM: 200,
      min: 14.8,
      max: 26.6,
      actualKpa: valueOf(saturationVapourPressureKpa(celsius(14.8))),
      windAtTwoMetres: 2,
      solar: 'from temperatures',
      soilHeat: 0,
    });
    expect(lyon.eto).toBeCloseTo(4.56, 1);
  });

  it('in calm air is the equilibrium evaporation, the share Δ/(Δ+γ) of the energy', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 45, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (temperature, net) => {
          const calm = penmanMonteithEtoMmPerDay({
            meanCelsius: celsius(temperature),
            netRadiationMjPerM2Day: megajoulePerM2Day(net),
            soilHeatMjPerM2Day: megajoulePerM2Day(0),
            windAtTwoMetresMPerS: 0,
            saturationVapourPressureKpa: kilopascal(2),
            actualVapourPressureKpa: kilopascal(1),
            airPressureKpa: kilopascal(100),
          });
          const slope = valueOf(saturationSlopeKpaPerCelsius(celsius(temperature)));
          expect(valueOf(calm)).toBeCloseTo((0.408 * net * slope) / (slope + 0.0665), 9);
        },
      ),
    );
  });

  it('is outside when the air holds more vapour than it can', () => {
    const outcome = penmanMonteithEtoMmPerDay({
      meanCelsius: celsius(20),
      netRadiationMjPerM2Day: megajoulePerM2Day(10),
      soilHeatMjPerM2Day: megajoulePerM2Day(0),
      windAtTwoMetresMPerS: 2,
      saturationVapourPressureKpa: kilopascal(2),
      actualVapourPressureKpa: kilopascal(3),
      airPressureKpa: kilopascal(100),
    });
    expect(outsideFrom(outcome)).toMatchObject({ quantity: 'vapour pressure', found: 3, to: 2 });
  });
});

import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import type { Kilopascal } from '../units/pressure.ts';
import type { MegajoulePerM2Day } from '../units/radiation.ts';
import type { Celsius } from '../units/temperature.ts';
import { type MillimetrePerDay, millimetrePerDay } from '../units/water-depth.ts';
import { psychrometricConstantKpaPerCelsius } from './psychrometric-constant.ts';
import { saturationSlopeKpaPerCelsius } from './saturation-slope.ts';

const windAtTwoMetres: ValidRange = {
  quantity: 'wind at two metres',
  unit: 'm/s',
  from: 0,
  to: 60,
};

/**
 * FAO Penman-Monteith reference evapotranspiration of a day over grass.
 *
 *     ETo = [0.408 Δ (Rn − G) + γ · 900/(T + 273) · u₂ (es − ea)] / [Δ + γ (1 + 0.34 u₂)]      mm/d
 *
 * T mean temperature in °C; Rn, G in MJ/m²/d; u₂ in m/s; es, ea and air pressure in kPa. G is about
 * 0 over a day. Holds outdoors over well-watered short grass; ea is not above es.
 *
 * Source: FAO-56 eq 6.
 * @example penmanMonteithEtoMmPerDay({ meanCelsius: celsius(16.9),
 *   netRadiationMjPerM2Day: megajoulePerM2Day(13.28), soilHeatMjPerM2Day: megajoulePerM2Day(0),
 *   windAtTwoMetresMPerS: 2.078, saturationVapourPressureKpa: kilopascal(1.997),
 *   actualVapourPressureKpa: kilopascal(1.409), airPressureKpa: kilopascal(100.1) })
 *   // 3.88, FAO-56 Example 18
 */
export function penmanMonteithEtoMmPerDay(day: {
  readonly meanCelsius: Celsius;
  readonly netRadiationMjPerM2Day: MegajoulePerM2Day;
  readonly soilHeatMjPerM2Day: MegajoulePerM2Day;
  readonly windAtTwoMetresMPerS: number;
  readonly saturationVapourPressureKpa: Kilopascal;
  readonly actualVapourPressureKpa: Kilopascal;
  readonly airPressureKpa: Kilopascal;
}): Outcome<MillimetrePerDay> {
  const outside = firstOutside(
    [day.windAtTwoMetresMPerS, windAtTwoMetres],
    [
      day.actualVapourPressureKpa,
      {
        quantity: 'vapour pressure',
        unit: 'kPa',
        from: 0,
        to: day.saturationVapourPressureKpa,
      },
    ],
  );
  if (outside) return outside;
  const slope = saturationSlopeKpaPerCelsius(day.meanCelsius);
  if (!slope.ok) return slope;
  const psychrometric = psychrometricConstantKpaPerCelsius(day.airPressureKpa);
  if (!psychrometric.ok) return psychrometric;
  const energy = 0.408 * slope.value * (day.netRadiationMjPerM2Day - day.soilHeatMjPerM2Day);
  const drying =
    ((psychrometric.value * 900) / (day.meanCelsius + 273)) *
    day.windAtTwoMetresMPerS *
    (day.saturationVapourPressureKpa - day.actualVapourPressureKpa);
  const resistance = slope.value + psychrometric.value * (1 + 0.34 * day.windAtTwoMetresMPerS);
  return holds(millimetrePerDay((energy + drying) / resistance));
}

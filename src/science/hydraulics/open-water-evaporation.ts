import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import type { Kilopascal } from '../units/pressure.ts';
import type { Celsius } from '../units/temperature.ts';
import { type MillimetrePerDay, millimetrePerDay } from '../units/water-depth.ts';
import { saturationVapourPressureKpa } from '../weather/saturation-vapour-pressure.ts';
import { vapourPressureDeficitKpa } from '../weather/vapour-pressure-deficit.ts';

const airSpeed: ValidRange = { quantity: 'air speed', unit: 'm/s', from: 0, to: 5 };
const share: ValidRange = { quantity: 'share of open surface', unit: '1', from: 0, to: 1 };
const waterTemperature: ValidRange = { quantity: 'water temperature', unit: '°C', from: 0, to: 45 };

const SECONDS_PER_DAY = 86_400;

/** A quiet tank indoors gives off half of what the formula says of pools in use; from memory. */
export const QUIET_TANK_ACTIVITY = 0.5;

/** Heat that takes a kilogram of water into air, kJ/kg (Harrison 1963, as in FAO-56 annex 3). */
const latentHeatKjPerKg = (waterCelsius: Celsius): number => 2501 - 2.361 * waterCelsius;

/**
 * Vapour pressure difference over a water surface at which nothing evaporates is taken as none: dew
 * on the water is left out.
 */
const drivingKpa = (water: Kilopascal, air: number): number => Math.max(0, water - air);

/**
 * Water lost from an open surface to the air above it.
 *
 *     E = (0.089 + 0.0782 v) (pw − pa) / Y · activity · open share      kg/m²/s, told as mm/d
 *
 * v air speed in m/s, pw saturation at the water's temperature and pa the air's vapour pressure in
 * kPa, Y latent heat in kJ/kg. Water 0 to 45 °C, air speed to 5 m/s. Made for pools: 1 for a pool in
 * use, 0.5 for a quiet tank.
 *
 * Source: Carrier 1918, as in the ASHRAE Handbook, HVAC Applications.
 * @example openWaterEvaporationMmPerDay({ waterCelsius: celsius(22), airCelsius: celsius(24),
 *   relativeHumidityPercent: 60, airSpeedMPerS: 0, openShare: 1, activity: 1 }) // 2.68
 */
export function openWaterEvaporationMmPerDay(surface: {
  readonly waterCelsius: Celsius;
  readonly airCelsius: Celsius;
  readonly relativeHumidityPercent: number;
  readonly airSpeedMPerS: number;
  /** Share of the surface that no lid or raft covers. */
  readonly openShare: number;
  readonly activity: number;
}): Outcome<MillimetrePerDay> {
  const outside = firstOutside(
    [surface.waterCelsius, waterTemperature],
    [surface.airSpeedMPerS, airSpeed],
    [surface.openShare, share],
    [surface.activity, { quantity: 'activity factor', unit: '1', from: 0, to: 2 }],
  );
  if (outside) return outside;
  const atWater = saturationVapourPressureKpa(surface.waterCelsius);
  if (!atWater.ok) return atWater;
  const inAir = saturationVapourPressureKpa(surface.airCelsius);
  if (!inAir.ok) return inAir;
  const deficit = vapourPressureDeficitKpa(surface);
  if (!deficit.ok) return deficit;
  const kgPerM2S =
    ((0.089 + 0.0782 * surface.airSpeedMPerS) *
      drivingKpa(atWater.value, inAir.value - deficit.value)) /
    latentHeatKjPerKg(surface.waterCelsius);
  return holds(millimetrePerDay(kgPerM2S * SECONDS_PER_DAY * surface.activity * surface.openShare));
}

import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type Kilopascal, kilopascal } from '../units/pressure.ts';
import type { Celsius } from '../units/temperature.ts';
import { meanSaturationVapourPressureKpa } from './mean-saturation-vapour-pressure.ts';
import { relativeHumidityPercent } from './ranges.ts';
import { saturationVapourPressureKpa } from './saturation-vapour-pressure.ts';

/**
 * Vapour pressure deficit of the air at one moment: what the air could still take up, and so what
 * pulls water out of leaves.
 *
 *     VPD = e°(T) · (1 − RH/100)      kPa, RH in %
 *
 * Source: FAO-56 chapter 3, definition of e° and RH (eq 10 and 11).
 * @example vapourPressureDeficitKpa({ airCelsius: celsius(25), relativeHumidityPercent: 60 }) // 1.267
 */
export function vapourPressureDeficitKpa(air: {
  readonly airCelsius: Celsius;
  readonly relativeHumidityPercent: number;
}): Outcome<Kilopascal> {
  const outside = firstOutside([air.relativeHumidityPercent, relativeHumidityPercent]);
  if (outside) return outside;
  const saturation = saturationVapourPressureKpa(air.airCelsius);
  if (!saturation.ok) return saturation;
  return holds(kilopascal(saturation.value * (1 - air.relativeHumidityPercent / 100)));
}

/**
 * Deficit between the inside of a leaf and the air; negative when dew settles on the leaf.
 *
 *     VPD_leaf = e°(Tleaf) − e°(Tair) · RH/100      kPa, RH in %
 *
 * Source: the same definitions, with the leaf's own temperature.
 * @example leafVapourPressureDeficitKpa({ leafCelsius: celsius(23), airCelsius: celsius(25),
 *   relativeHumidityPercent: 60 }) // 0.909
 */
export function leafVapourPressureDeficitKpa(air: {
  readonly leafCelsius: Celsius;
  readonly airCelsius: Celsius;
  readonly relativeHumidityPercent: number;
}): Outcome<Kilopascal> {
  const deficit = vapourPressureDeficitKpa(air);
  if (!deficit.ok) return deficit;
  const ofAir = saturationVapourPressureKpa(air.airCelsius);
  if (!ofAir.ok) return ofAir;
  const ofLeaf = saturationVapourPressureKpa(air.leafCelsius);
  if (!ofLeaf.ok) return ofLeaf;
  return holds(kilopascal(ofLeaf.value - ofAir.value + deficit.value));
}

/**
 * Mean deficit of a day when only its temperatures are known: the night's minimum stands for the dew
 * point, as FAO-56 advises where humidity was not measured.
 *
 *     VPD = (e°(Tmax) + e°(Tmin)) / 2 − e°(Tmin)      kPa
 *
 * Source: FAO-56 eq 12 and 48.
 * @example dayVapourPressureDeficitKpa({ minCelsius: celsius(15), maxCelsius: celsius(24.5) }) // 0.685
 */
export function dayVapourPressureDeficitKpa(day: {
  readonly minCelsius: Celsius;
  readonly maxCelsius: Celsius;
}): Outcome<Kilopascal> {
  const mean = meanSaturationVapourPressureKpa(day);
  if (!mean.ok) return mean;
  const actual = saturationVapourPressureKpa(day.minCelsius);
  if (!actual.ok) return actual;
  return holds(kilopascal(mean.value - actual.value));
}

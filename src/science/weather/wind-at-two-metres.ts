import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';

const windSpeed: ValidRange = { quantity: 'wind speed', unit: 'm/s', from: 0, to: 60 };
/** Below half a metre the logarithm of the profile is no longer over grass. */
const heightAboveGrass: ValidRange = {
  quantity: 'height of the wind gauge',
  unit: 'm',
  from: 0.5,
  to: 100,
};

/**
 * Wind speed two metres above short grass, from a gauge at another height.
 *
 *     u₂ = u_z · 4.87 / ln(67.8 z − 5.42)      m/s, z in m, 0.5 to 100 m
 *
 * Source: FAO-56 eq 47.
 * @example windAtTwoMetresMPerS({ windMPerS: 3.2, heightM: 10 }) // 2.4, FAO-56 Example 14
 */
export function windAtTwoMetresMPerS(gauge: {
  readonly windMPerS: number;
  readonly heightM: number;
}): Outcome<number> {
  const outside = firstOutside([gauge.windMPerS, windSpeed], [gauge.heightM, heightAboveGrass]);
  if (outside) return outside;
  return holds((gauge.windMPerS * 4.87) / Math.log(67.8 * gauge.heightM - 5.42));
}

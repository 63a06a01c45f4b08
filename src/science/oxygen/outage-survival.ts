import { holds, type Outcome } from '../outcome.ts';
import type { Litre } from '../units/amount.ts';
import { milligramPerL } from '../units/concentration.ts';
import type { Kilopascal } from '../units/pressure.ts';
import type { Celsius } from '../units/temperature.ts';
import {
  type Assumption,
  DRAINED_ROOTS,
  OXYGEN_AT_THE_START,
  ROOT_MASS,
  ROOT_MASS_OF_ANY_CROP,
  ROOT_RESPIRATION,
  STILL_SURFACE_TRANSFER,
} from './outage-assumptions.ts';
import { hoursToOxygenLimit } from './oxygen-depletion.ts';
import { ROOT_OXYGEN } from './oxygen-limits.ts';
import { oxygenSaturationMgPerL } from './oxygen-saturation.ts';
import { oxygenUseAt } from './root-respiration.ts';

/** The ways of growing, as the trade names them. */
export type GrowingMethod =
  | 'deep-water-culture'
  | 'nutrient-film'
  | 'flood-and-drain'
  | 'drip'
  | 'aeroponic'
  | 'non-circulating';

/** What has stopped: everything with a plug, the pump that moves the solution, or the air. */
export type Failure = 'power' | 'circulation' | 'aeration';

export interface OutageCase {
  readonly method: GrowingMethod;
  readonly failure: Failure;
  readonly sky: 'sun' | 'dull';
  readonly waterL: Litre;
  /** Depth of the water that the roots hang in. */
  readonly waterDepthM: number;
  readonly waterCelsius: Celsius;
  readonly airPressureKpa: Kilopascal;
  readonly plants: number;
  /** Null when it is not known. */
  readonly crop: string | null;
}

/** Hours until harm with their bounds, and what they rest on; or that nothing is lost by waiting. */
export type Survival =
  | { readonly kind: 'not-affected' }
  | {
      readonly kind: 'limited';
      readonly by: 'oxygen' | 'drying';
      readonly lowHours: number;
      readonly likelyHours: number;
      readonly highHours: number;
      readonly assumptions: readonly Assumption[];
    };

/** After a week without power other things decide; a bound of "never" is told as this. */
export const LONGEST_TOLD_HOURS = 168;

/**
 * How long a system lasts in an outage, with bounds.
 *
 * Roots that hang in water are limited by its oxygen: h = (C₀ − Climit) · V / (q m), down to 3 mg/L
 * for the low and the likely figure and to 2 mg/L for the high one. Roots that a pump wets are
 * limited by drying, by a table of common practice. Jars whose roots have an air gap need no power.
 *
 * Source: oxygen balance as in `oxygen-depletion.ts`; the figures in `outage-assumptions.ts`, each
 * with its standing. The bounds are wide because roots were not weighed.
 * @example outageSurvival({ method: 'nutrient-film', failure: 'power', sky: 'sun', … })
 *   // 1 to 4 h, likely 2
 */
export function outageSurvival(outage: OutageCase): Outcome<Survival> {
  switch (outage.method) {
    case 'non-circulating':
      return holds({ kind: 'not-affected' });
    case 'deep-water-culture':
      // Air stones hold the oxygen alone when only the circulation stops.
      if (outage.failure === 'circulation') return holds({ kind: 'not-affected' });
      return standingWaterSurvival(outage);
    case 'nutrient-film':
    case 'flood-and-drain':
    case 'drip':
    case 'aeroponic': {
      // Where a pump wets the roots, the falling water takes up air of its own.
      if (outage.failure === 'aeration') return holds({ kind: 'not-affected' });
      const drying = DRAINED_ROOTS[outage.method][outage.sky];
      return holds({
        kind: 'limited',
        by: 'drying',
        lowHours: drying.low,
        likelyHours: drying.likely,
        highHours: drying.high,
        assumptions: [drying],
      });
    }
  }
}

type Bound = 'low' | 'likely' | 'high';

/**
 * Use of all roots of a plant at 20 °C, mg/h. Two unknowns are seldom at their worst together, so
 * their spreads are added as squares of logarithms.
 */
function plantUseMgPerHour(perPlant: Assumption, bound: Bound): number {
  const likely = ROOT_RESPIRATION.likely * perPlant.likely;
  const spread = Math.hypot(
    Math.log(ROOT_RESPIRATION[bound] / ROOT_RESPIRATION.likely),
    Math.log(perPlant[bound] / perPlant.likely),
  );
  return likely * Math.exp(bound === 'low' ? -spread : spread);
}

function standingWaterSurvival(outage: OutageCase): Outcome<Survival> {
  const saturation = oxygenSaturationMgPerL({ ...outage, salinityGPerKg: 0 });
  if (!saturation.ok) return saturation;
  const perPlant = ROOT_MASS.get(outage.crop ?? '') ?? ROOT_MASS_OF_ANY_CROP;

  const hoursWhen = (
    use: Bound,
    store: Bound,
    limit: 'lowMgPerL' | 'harmfulMgPerL',
  ): Outcome<number> => {
    const perPlantMgPerHour = oxygenUseAt({
      useAt20Celsius: plantUseMgPerHour(perPlant, use),
      rootCelsius: outage.waterCelsius,
    });
    if (!perPlantMgPerHour.ok) return perPlantMgPerHour;
    const time = hoursToOxygenLimit(
      {
        waterL: outage.waterL,
        startMgPerL: milligramPerL(saturation.value * OXYGEN_AT_THE_START[store]),
        saturationMgPerL: saturation.value,
        rootsMgPerHour: perPlantMgPerHour.value * outage.plants,
        exchangePerHour: STILL_SURFACE_TRANSFER[store] / outage.waterDepthM,
      },
      ROOT_OXYGEN[limit],
    );
    if (!time.ok) return time;
    return holds(
      time.value.kind === 'never'
        ? LONGEST_TOLD_HOURS
        : Math.min(LONGEST_TOLD_HOURS, time.value.hours),
    );
  };

  const low = hoursWhen('high', 'low', 'lowMgPerL');
  if (!low.ok) return low;
  const likely = hoursWhen('likely', 'likely', 'lowMgPerL');
  if (!likely.ok) return likely;
  const high = hoursWhen('low', 'high', 'harmfulMgPerL');
  if (!high.ok) return high;
  return holds({
    kind: 'limited',
    by: 'oxygen',
    lowHours: low.value,
    likelyHours: likely.value,
    highHours: high.value,
    assumptions: [ROOT_RESPIRATION, perPlant, OXYGEN_AT_THE_START, STILL_SURFACE_TRANSFER],
  });
}

import { holds, type Outcome } from '../outcome.ts';
import { milligramPerL } from '../units/concentration.ts';
import {
  type Assumption,
  OXYGEN_AT_THE_START,
  ROOT_MASS,
  ROOT_MASS_OF_ANY_CROP,
  ROOT_RESPIRATION,
  STILL_SURFACE_TRANSFER,
} from './outage-assumptions.ts';
import type { OutageCase, Survival } from './outage-case.ts';
import { hoursToOxygenLimit } from './oxygen-depletion.ts';
import { ROOT_OXYGEN } from './oxygen-limits.ts';
import { oxygenSaturationMgPerL } from './oxygen-saturation.ts';
import { oxygenUseAt } from './root-respiration.ts';

/** After a week without power other things decide; a bound of "never" is told as this. */
export const LONGEST_TOLD_HOURS = 168;

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

/**
 * Hours until roots that hang in still water run out of oxygen.
 *
 *     h = (C₀ − Climit) · V / (q m)      the surface counts for the high figure only
 *
 * Down to 3 mg/L for the low and the likely figure, to 2 mg/L for the high one. Water of 0 to 40 °C.
 *
 * Source: oxygen balance as in `hoursToOxygenLimit`; figures in `outage-assumptions.ts`.
 * @example standingWaterSurvival({ method: 'deep-water-culture', failure: 'power', sky: 'sun',
 *   waterL: litre(108), waterDepthM: 0.3, waterCelsius: celsius(22), airPressureKpa: kilopascal(101.3),
 *   plants: 6, crop: 'cucumber' }) // 0.5 to 16 h, likely 2.1
 */
export function standingWaterSurvival(outage: OutageCase): Outcome<Survival> {
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

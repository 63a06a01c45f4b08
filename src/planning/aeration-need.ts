import type { System } from '../greenhouse/system.ts';
import {
  ROOT_MASS,
  ROOT_MASS_OF_ANY_CROP,
  ROOT_RESPIRATION,
} from '../science/oxygen/outage-assumptions.ts';
import { oxygenSaturationAtOneAtmosphereMgPerL } from '../science/oxygen/oxygen-saturation.ts';
import { oxygenUseAt } from '../science/oxygen/root-respiration.ts';
import { celsius } from '../science/units/temperature.ts';

/**
 * What a running venturi or air pump gives: share of the oxygen lack made up an hour. Set so that the
 * trade's five minutes an hour come out for a large cool reservoir; an estimate.
 */
const TRANSFER_PER_HOUR = 8;
const WANTED_MG_PER_L = 6;
/** Hot water holds little more than is wanted: the lack is never reckoned smaller than this. */
const LEAST_LACK_MG_PER_L = 0.8;
const LEAST_MIN_PER_HOUR = 5;
const STEP_MIN_PER_HOUR = 5;

/**
 * Minutes an hour that the air should run, by the roots' use at this temperature against what the
 * device gives; null where it should never stop (roots that hang in still water).
 *
 *     minutes = 60 · q(T) m / (V · kLa · (C* − C wanted)), in steps of five, 5 to 60
 */
export function aerationNeedMinPerHour(
  system: System,
  water: { readonly litres: number; readonly waterC: number },
): number | null {
  if (system.method === 'deep-water-culture') return 60;
  const saturation = oxygenSaturationAtOneAtmosphereMgPerL({
    waterCelsius: celsius(water.waterC),
    salinityGPerKg: 0,
  });
  const perPlant = ROOT_MASS.get(system.crop ?? '') ?? ROOT_MASS_OF_ANY_CROP;
  const use = oxygenUseAt({
    useAt20Celsius: ROOT_RESPIRATION.likely * perPlant.likely * system.plants,
    rootCelsius: celsius(water.waterC),
  });
  if (!saturation.ok || !use.ok || water.litres <= 0) return null;
  const lack = Math.max(LEAST_LACK_MG_PER_L, saturation.value - WANTED_MG_PER_L);
  const minutes = (60 * use.value) / (water.litres * TRANSFER_PER_HOUR * lack);
  const stepped = Math.round(minutes / STEP_MIN_PER_HOUR) * STEP_MIN_PER_HOUR;
  return Math.min(60, Math.max(LEAST_MIN_PER_HOUR, stepped));
}

import type { SpokenUnits } from '../../greenhouse/greenhouse.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import { conductivity } from './conductivity.ts';
import { type Measure, measure } from './measure.ts';
import { temperature } from './temperature.ts';
import { volume } from './volume.ts';

/** A logged value, in its quantity's stored unit, as the household speaks of it. */
export function measureOf(quantity: Quantity, value: number, units: SpokenUnits): Measure {
  switch (quantity) {
    case 'ph':
      return measure(value, 'pH', 1, 2);
    case 'ec':
      return conductivity(value, units);
    case 'water-temperature':
    case 'air-temperature':
      return temperature(value, units.temperature);
    case 'humidity':
      return measure(value, '%', 0, 1);
    case 'dissolved-oxygen':
      return measure(value, 'mg/L', 0, 1);
    case 'level':
    case 'top-up':
    case 'reservoir-change':
      return volume(value, units.volume);
    case 'dose':
      return measure(value, 'mL', 0, value < 1 ? 2 : 1);
    case 'fill-time':
      return measure(value, 'min', 0, 1);
    case 'aeration':
      return measure(value, 'min/h', 0, 1);
    case 'harvest':
      return value < 1000 ? measure(value, 'g', 0, 0) : measure(value / 1000, 'kg', 0, 2);
    case 'calibration':
    case 'outage':
    case 'restored':
    case 'duty-done':
    case 'duty-failed':
    case 'note':
      return measure(value, 'none', 0, 3);
  }
}

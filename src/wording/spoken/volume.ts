import type { VolumeUnit } from '../../greenhouse/greenhouse.ts';
import { type Measure, measure } from './measure.ts';

/** By definition, litres in one US liquid gallon. */
const LITRES_PER_US_GALLON = 3.785411784;

/** A volume that somebody said or that is set: as it was said. */
export function volume(litres: number, unit: VolumeUnit): Measure {
  return measure(inUnit(litres, unit), unit, 0, 2);
}

/** An estimate of a volume: more digits than it deserves would be a lie. */
export function roughVolume(litres: number, unit: VolumeUnit): Measure {
  const value = Math.max(0, inUnit(litres, unit));
  return measure(value, unit, 0, value < wholeVolumeFrom ? 1 : 0);
}

const wholeVolumeFrom = 20;

/** Water used in a day, to two figures. */
export function useRate(litresPerDay: number, unit: VolumeUnit): Measure {
  const value = Math.max(0, inUnit(litresPerDay, unit));
  return measure(value, unit, 0, value < 1 ? 2 : value < wholeRateFrom ? 1 : 0);
}

const wholeRateFrom = 10;

/** A volume to be carried. Litres come rounded from the plan; gallons are halved below twenty. */
export function carriedVolume(litres: number, unit: VolumeUnit): Measure {
  if (unit === 'L') return measure(litres, unit, 0, 1);
  const gallons = inUnit(litres, unit);
  const isSmall = gallons < halfGallonsBelow && gallons >= 1;
  return measure(
    isSmall ? Math.round(gallons * 2) / 2 : gallons,
    unit,
    0,
    gallons < 1 ? 2 : isSmall ? 1 : 0,
  );
}

const halfGallonsBelow = 20;

function inUnit(litres: number, unit: VolumeUnit): number {
  return unit === 'gal' ? litres / LITRES_PER_US_GALLON : litres;
}

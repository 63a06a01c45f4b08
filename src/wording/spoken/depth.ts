import type { VolumeUnit } from '../../greenhouse/greenhouse.ts';
import { type Measure, measure } from './measure.ts';

const CM_PER_INCH = 2.54;

/** A depth of water; whoever counts in gallons measures in inches. */
export function depth(cm: number, volumeUnit: VolumeUnit): Measure {
  return volumeUnit === 'gal' ? measure(cm / CM_PER_INCH, 'in', 0, 1) : measure(cm, 'cm', 0, 1);
}

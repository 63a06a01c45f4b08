import type { SpokenUnits } from '../../greenhouse/greenhouse.ts';
import { type Measure, measure } from './measure.ts';

/** An EC in the unit that the household's meters show; ppm by the household's factor. */
export function conductivity(ecMsPerCm: number, units: SpokenUnits): Measure {
  switch (units.conductivity) {
    case 'mS/cm':
      return measure(ecMsPerCm, 'mS/cm', 1, 2);
    case 'uS/cm':
      return measure(ecMsPerCm * 1000, 'µS/cm', 0, 0);
    case 'ppm':
      return partsPerMillion(ecMsPerCm, units.tdsFactor);
    case 'CF':
      return measure(ecMsPerCm * 10, 'CF', 0, 1);
  }
}

/** ppm shown for an EC by a meter of the given factor, ppm for 1 mS/cm. */
export function partsPerMillion(ecMsPerCm: number, factor: number): Measure {
  return measure(ecMsPerCm * factor, 'ppm', 0, 0);
}

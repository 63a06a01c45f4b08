import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import { conductivity } from './conductivity.ts';
import { type Measure, measure } from './measure.ts';

/** Common practice: buffers start at 4, and household EC standards end below 3 mS/cm. */
const lowestBufferPh = 3;

/** A reference's value, or what the probe showed in it; `valueInReference` is the reference's. */
export function referenceMeasure(
  value: number,
  valueInReference: number,
  probeName: string | undefined,
  greenhouse: Greenhouse,
): Measure {
  const measures = greenhouse.probes.find(({ name }) => name === probeName)?.measures ?? [];
  const isPh = measures.includes('ph');
  const isEc = measures.includes('ec');
  if (isPh === isEc ? valueInReference >= lowestBufferPh : isPh) return measure(value, 'pH', 2, 2);
  const told = conductivity(value, greenhouse.units);
  // Standards are named to the microsiemens: 1.413.
  return told.unit === 'mS/cm' ? { ...told, leastDecimals: 2, mostDecimals: 3 } : told;
}

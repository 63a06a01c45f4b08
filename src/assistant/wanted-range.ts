import type { Quantity } from '../greenhouse/quantity.ts';
import type { Range, System } from '../greenhouse/system.ts';

/** The range that a system is kept in, in the quantity's unit; null where none is set. */
export function wantedRange(system: System, quantity: Quantity): Range | null {
  switch (quantity) {
    case 'ph':
      return system.ph;
    case 'ec':
      return system.ecMsPerCm;
    case 'water-temperature':
      return system.waterTemperatureC;
    case 'level':
      return [system.lowL, system.brimL];
    default:
      return null;
  }
}

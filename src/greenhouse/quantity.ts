import type { System } from './system.ts';

/** Everything the logbook can hold, each with its one unit. */
export const unitOf = {
  ph: 'pH',
  ec: 'mS/cm',
  'water-temperature': '°C',
  'air-temperature': '°C',
  humidity: '%',
  'dissolved-oxygen': 'mg/L',
  level: 'L',
  'top-up': 'L',
  'reservoir-change': 'L',
  dose: 'mL',
  calibration: 'pH or mS/cm',
  'fill-time': 'min',
  aeration: 'min/h',
  outage: '1',
  restored: '1',
  harvest: 'g',
  'duty-done': '1',
  'duty-failed': '1',
  note: '1',
} as const;

export type Quantity = keyof typeof unitOf;

/** What a probe can be calibrated for. */
export type ReferenceQuantity = 'ph' | 'ec' | 'dissolved-oxygen';

/** Readings of a state that holds until it changes, of which two different ones at once are a conflict. */
export const readings = [
  'ph',
  'ec',
  'water-temperature',
  'air-temperature',
  'humidity',
  'dissolved-oxygen',
  'level',
] as const satisfies readonly Quantity[];
export type Reading = (typeof readings)[number];

export function isReading(quantity: Quantity): quantity is Reading {
  return (readings as readonly Quantity[]).includes(quantity);
}

/** Quantities that belong to the whole greenhouse, never to one system. */
export function belongsToGreenhouse(quantity: Quantity): boolean {
  return quantity === 'air-temperature' || quantity === 'humidity';
}

const doseMlPerLitreOfBrim = 5;

/**
 * The values that are believed without asking, bounds included, in the quantity's unit.
 * Common practice of what home systems and their meters can show; null where any value may be.
 */
export function believable(
  quantity: Quantity,
  system: Pick<System, 'brimL'> | null,
): readonly [number, number] | null {
  const brimL = system?.brimL ?? Number.POSITIVE_INFINITY;
  switch (quantity) {
    case 'ph':
      return [3, 9];
    case 'ec':
      return [0, 10];
    case 'water-temperature':
      return [-2, 45];
    case 'air-temperature':
      return [-20, 60];
    case 'humidity':
      return [0, 100];
    case 'dissolved-oxygen':
      return [0, 25];
    case 'level':
    case 'top-up':
    case 'reservoir-change':
      return [0, brimL];
    case 'dose':
      return [0, doseMlPerLitreOfBrim * brimL];
    case 'fill-time':
      return [0, 180];
    case 'aeration':
      return [0, 60];
    case 'harvest':
      return [0, 50_000];
    case 'calibration':
    case 'outage':
    case 'restored':
    case 'duty-done':
    case 'duty-failed':
    case 'note':
      return null;
  }
}

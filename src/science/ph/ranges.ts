import type { ValidRange } from '../outcome.ts';

/** Where reservoirs and their water are found; beyond, the simple model is not meant to hold. */
export const waterPh: ValidRange = { quantity: 'pH', unit: 'pH', from: 3.5, to: 10 };

/** Alkalinity of waters people grow with; negative in water that already holds strong acid. */
export const alkalinity: ValidRange = {
  quantity: 'alkalinity',
  unit: 'meq/L',
  from: -0.5,
  to: 10,
};

/** From thin air to a greenhouse that is enriched on purpose. */
export const carbonDioxide: ValidRange = {
  quantity: 'carbon dioxide in the air',
  unit: 'ppm',
  from: 100,
  to: 5000,
};

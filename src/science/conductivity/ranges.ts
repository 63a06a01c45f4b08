import type { ValidRange } from '../outcome.ts';

/** Below about 3 mS/cm conductivity adds up within a few per cent; beyond 5 it bends too much. */
export const additiveConductivity: ValidRange = {
  quantity: 'conductivity',
  unit: 'mS/cm',
  from: 0,
  to: 5,
};

export const reservoirVolume: ValidRange = { quantity: 'volume', unit: 'L', from: 0.1, to: 1e6 };

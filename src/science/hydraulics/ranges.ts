import type { ValidRange } from '../outcome.ts';

/** Pumps and hoses of a home greenhouse, with a wide margin. */
export const flowLPerH: ValidRange = { quantity: 'flow', unit: 'L/h', from: 0, to: 100_000 };
export const ratedFlowLPerH: ValidRange = {
  quantity: 'rated flow',
  unit: 'L/h',
  from: 10,
  to: 100_000,
};
export const hoseDiameterMm: ValidRange = {
  quantity: 'inner diameter of the hose',
  unit: 'mm',
  from: 2,
  to: 200,
};
export const hoseLengthM: ValidRange = {
  quantity: 'length of the hose',
  unit: 'm',
  from: 0,
  to: 1000,
};
export const waterTemperatureCelsius: ValidRange = {
  quantity: 'water temperature',
  unit: '°C',
  from: 0,
  to: 60,
};

/** Standard gravity, m/s². */
export const GRAVITY_M_PER_S2 = 9.80665;

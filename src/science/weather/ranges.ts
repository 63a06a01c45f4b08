import type { ValidRange } from '../outcome.ts';

/** Spans in which the weather formulas hold. Each says where it is from. */

/** FAO-56 Table 2.3 prints 1 to 48.5 °C; below zero the formula is that over water, taken to −20 °C. */
export const airTemperatureCelsius: ValidRange = {
  quantity: 'air temperature',
  unit: '°C',
  from: -20,
  to: 50,
};

export const relativeHumidityPercent: ValidRange = {
  quantity: 'relative humidity',
  unit: '%',
  from: 0,
  to: 100,
};

/** The sunset hour angle is clamped, so polar day and night are inside. */
export const latitudeDegreesNorth: ValidRange = {
  quantity: 'latitude',
  unit: '° north',
  from: -90,
  to: 90,
};

export const dayOfYearNumber: ValidRange = {
  quantity: 'day of the year',
  unit: 'd',
  from: 1,
  to: 366,
};

/** FAO-56 Table 2.1 ends at 4000 m; the lowest shores of the world lie at −430 m. */
export const elevationMetres: ValidRange = {
  quantity: 'elevation',
  unit: 'm',
  from: -430,
  to: 4000,
};

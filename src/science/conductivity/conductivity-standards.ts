import { interpolate, spanOf, type Table } from '../interpolation.ts';
import { firstOutside, holds, type Outcome } from '../outcome.ts';
import { type MicrosiemensPerCm, microsiemensPerCm } from '../units/conductivity.ts';
import type { Celsius } from '../units/temperature.ts';

/** Solutions that conductivity meters are set by, named by their µS/cm at 25 °C. */
export type ConductivityStandard = '1413' | '12880';

/**
 * Potassium chloride of 0.01 and 0.1 mol/L by temperature, µS/cm (OIML R 56; an instrument manual's
 * table, whose 35 °C entry of 1667 contradicts the others and is left out). By mol/kg the thin one
 * is 1408: another solution.
 */
const STANDARDS: Readonly<Record<ConductivityStandard, Table>> = {
  '1413': [
    [5, 896],
    [10, 1020],
    [15, 1147],
    [20, 1278],
    [25, 1413],
    [30, 1552],
  ],
  '12880': [
    [5, 8220],
    [10, 9330],
    [15, 10480],
    [20, 11670],
    [25, 12880],
    [30, 14120],
    [35, 15390],
  ],
};

/**
 * What a meter without temperature compensation should show in a standard of this temperature.
 *
 *     straight line between the entries of the table      µS/cm, 5 to 30 (12880: 35) °C
 *
 * Source: OIML R 56, by an instrument manual's table.
 * @example standardConductivityUsPerCm('1413', celsius(20)) // 1278
 */
export function standardConductivityUsPerCm(
  standard: ConductivityStandard,
  solutionCelsius: Celsius,
): Outcome<MicrosiemensPerCm> {
  const table = STANDARDS[standard];
  const outside = firstOutside([
    solutionCelsius,
    { quantity: 'temperature of the standard', unit: '°C', ...spanOf(table) },
  ]);
  if (outside) return outside;
  return holds(microsiemensPerCm(interpolate(table, solutionCelsius)));
}

import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import { type MilligramPerL, milligramPerL } from '../units/concentration.ts';
import { type Atmosphere, atmosphereFromKilopascal, type Kilopascal } from '../units/pressure.ts';
import { type Celsius, kelvinFromCelsius } from '../units/temperature.ts';

const waterTemperature: ValidRange = {
  quantity: 'water temperature',
  unit: '°C',
  from: 0,
  to: 40,
};
const salinity: ValidRange = { quantity: 'salinity', unit: 'g/kg', from: 0, to: 40 };
/** From 4500 m up to the highest weather at the sea. */
const airPressure: ValidRange = { quantity: 'air pressure', unit: 'kPa', from: 55, to: 110 };

/**
 * Oxygen that water holds in balance with moist air of one standard atmosphere.
 *
 *     ln C* = −139.34411 + 1.575701·10⁵/T − 6.642308·10⁷/T² + 1.243800·10¹⁰/T³ − 8.621949·10¹¹/T⁴
 *             − S (0.017674 − 10.754/T + 2140.7/T²)      mg/L, T in K, S in g/kg
 *
 * 0 to 40 °C, salinity 0 to 40 g/kg. The 2 g/kg of a nutrient solution take 1.2 % away: 0 will do.
 *
 * Source: Benson and Krause 1984; Standard Methods 4500-O; USGS Office of Water Quality Technical
 * Memorandum 2011.03.
 * @example oxygenSaturationAtOneAtmosphereMgPerL({ waterCelsius: celsius(20), salinityGPerKg: 0 })
 *   // 9.092, Standard Methods table
 */
export function oxygenSaturationAtOneAtmosphereMgPerL(water: {
  readonly waterCelsius: Celsius;
  readonly salinityGPerKg: number;
}): Outcome<MilligramPerL> {
  const outside = firstOutside(
    [water.waterCelsius, waterTemperature],
    [water.salinityGPerKg, salinity],
  );
  if (outside) return outside;
  const kelvin = kelvinFromCelsius(water.waterCelsius);
  const fresh =
    -139.34411 +
    1.575701e5 / kelvin -
    6.642308e7 / kelvin ** 2 +
    1.2438e10 / kelvin ** 3 -
    8.621949e11 / kelvin ** 4;
  const salting = water.salinityGPerKg * (0.017674 - 10.754 / kelvin + 2140.7 / kelvin ** 2);
  return holds(milligramPerL(Math.exp(fresh - salting)));
}

/**
 * Share of the one-atmosphere saturation that is left at another air pressure.
 *
 *     F = P (1 − Pwv/P)(1 − θP) / [(1 − Pwv)(1 − θ)]      P in atm
 *     ln Pwv = 11.8571 − 3840.70/T − 216961/T²,  θ = 0.000975 − 1.426·10⁻⁵ t + 6.436·10⁻⁸ t²
 */
function pressureShare(waterCelsius: Celsius, pressureAtm: Atmosphere): number {
  const kelvin = kelvinFromCelsius(waterCelsius);
  const vapourAtm = Math.exp(11.8571 - 3840.7 / kelvin - 216961 / kelvin ** 2);
  const theta = 0.000975 - 1.426e-5 * waterCelsius + 6.436e-8 * waterCelsius ** 2;
  return (
    (pressureAtm * (1 - vapourAtm / pressureAtm) * (1 - theta * pressureAtm)) /
    ((1 - vapourAtm) * (1 - theta))
  );
}

/**
 * Oxygen that water holds in balance with air of a given pressure (the station's own, not reduced
 * to sea level).
 *
 *     Cp = C* · P (1 − Pwv/P)(1 − θP) / [(1 − Pwv)(1 − θ)]      mg/L, P in atm within the formula
 *
 * 0 to 40 °C, 55 to 110 kPa, salinity 0 to 40 g/kg.
 *
 * Source: Benson and Krause 1984; Standard Methods 4500-O.
 * @example oxygenSaturationMgPerL({ waterCelsius: celsius(20), salinityGPerKg: 0,
 *   airPressureKpa: kilopascalFromMmHg(700) }) // 8.36, an instrument manual's table: 8.4
 */
export function oxygenSaturationMgPerL(water: {
  readonly waterCelsius: Celsius;
  readonly salinityGPerKg: number;
  readonly airPressureKpa: Kilopascal;
}): Outcome<MilligramPerL> {
  const outside = firstOutside([water.airPressureKpa, airPressure]);
  if (outside) return outside;
  const atOneAtmosphere = oxygenSaturationAtOneAtmosphereMgPerL(water);
  if (!atOneAtmosphere.ok) return atOneAtmosphere;
  const share = pressureShare(water.waterCelsius, atmosphereFromKilopascal(water.airPressureKpa));
  return holds(milligramPerL(atOneAtmosphere.value * share));
}

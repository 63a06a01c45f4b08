import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import { type Celsius, kelvinFromCelsius } from '../units/temperature.ts';

const waterTemperature: ValidRange = { quantity: 'water temperature', unit: '°C', from: 0, to: 50 };

/** Equilibrium constants of carbonic acid and water, in mol/L (and atm for the gas). */
export interface CarbonateConstants {
  /** KH: dissolved carbon dioxide over its pressure, mol/L/atm. */
  readonly gasMolPerLAtm: number;
  /** K1: first dissociation, mol/L. */
  readonly firstMolPerL: number;
  /** K2: second dissociation, mol/L. */
  readonly secondMolPerL: number;
  /** Kw: ion product of water, mol²/L². */
  readonly waterMol2PerL2: number;
}

/**
 * Constants of the carbonate system in thin water, 0 to 50 °C (T in K, log to base 10).
 *
 *     log KH = 108.3865 + 0.01985076 T − 6919.53/T − 40.45154 log T + 669365/T²
 *     log K1 = −356.3094 − 0.06091964 T + 21834.37/T + 126.8339 log T − 1684915/T²
 *     log K2 = −107.8871 − 0.03252849 T + 5151.79/T + 38.92561 log T − 563713.9/T²
 *     log Kw = −(4470.99/T − 6.0875 + 0.01706 T)
 *
 * Source: Plummer and Busenberg 1982, Geochim. Cosmochim. Acta 46:1011; Kw after Stumm and Morgan,
 * Aquatic Chemistry.
 * @example carbonateConstants(celsius(25)) // pK 1.468, 6.352, 10.329 and 13.995
 */
export function carbonateConstants(waterCelsius: Celsius): Outcome<CarbonateConstants> {
  const outside = firstOutside([waterCelsius, waterTemperature]);
  if (outside) return outside;
  const kelvin = kelvinFromCelsius(waterCelsius);
  const log = Math.log10(kelvin);
  return holds({
    gasMolPerLAtm:
      10 **
      (108.3865 + 0.01985076 * kelvin - 6919.53 / kelvin - 40.45154 * log + 669365 / kelvin ** 2),
    firstMolPerL:
      10 **
      (-356.3094 -
        0.06091964 * kelvin +
        21834.37 / kelvin +
        126.8339 * log -
        1684915 / kelvin ** 2),
    secondMolPerL:
      10 **
      (-107.8871 -
        0.03252849 * kelvin +
        5151.79 / kelvin +
        38.92561 * log -
        563713.9 / kelvin ** 2),
    waterMol2PerL2: 10 ** -(4470.99 / kelvin - 6.0875 + 0.01706 * kelvin),
  });
}

import { type MillimolePerL } from '../units/concentration.ts';
import { ION_COEFFICIENTS, type Ion } from './ion-coefficients.ts';

/** Amounts of ions in a solution; an ion that is not named is not there. */
export type IonAmounts = Readonly<Partial<Record<Ion, MillimolePerL>>>;

const charged = (ions: IonAmounts): readonly { charge: number; mmolPerL: number }[] =>
  (Object.entries(ions) as [Ion, MillimolePerL][]).map(([ion, mmolPerL]) => ({
    charge: ION_COEFFICIENTS[ion].charge,
    mmolPerL,
  }));

/**
 * Ionic strength of a solution.
 *
 *     I = ½ Σ cᵢ zᵢ²      mol/L, c in mol/L
 *
 * Source: Lewis and Randall 1921.
 * @example ionicStrengthMolPerL({ K: millimolePerL(10), Cl: millimolePerL(10) }) // 0.01
 */
export const ionicStrengthMolPerL = (ions: IonAmounts): number =>
  charged(ions).reduce((sum, { charge, mmolPerL }) => sum + mmolPerL * charge ** 2, 0) / 2000;

/** Positive and negative charge of a solution, meq/L each; a real solution has as much of both. */
export interface ChargeSums {
  readonly cationsMeqPerL: number;
  readonly anionsMeqPerL: number;
}

/** @example chargeSums({ Ca: millimolePerL(5), NO3: millimolePerL(10) }) // 10 and 10 */
export const chargeSums = (ions: IonAmounts): ChargeSums => {
  const sumOf = (sign: number) =>
    charged(ions).reduce(
      (sum, { charge, mmolPerL }) => sum + Math.max(0, sign * charge) * mmolPerL,
      0,
    );
  return { cationsMeqPerL: sumOf(1), anionsMeqPerL: sumOf(-1) };
};

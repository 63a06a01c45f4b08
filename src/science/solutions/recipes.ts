import type { IonAmounts } from '../conductivity/ionic-strength.ts';
import { millimolePerL } from '../units/concentration.ts';

/** A published nutrient solution. */
export interface Recipe {
  readonly name: string;
  readonly source: string;
  readonly ions: IonAmounts;
}

/** @example recipeConductivityMsPerCm(HOAGLAND_1.ions, celsius(25)) // 2.29 */
export const HOAGLAND_1: Recipe = {
  name: 'Hoagland no. 1',
  source: 'Hoagland and Arnon 1938, 1950, California Agric. Exp. Station Circular 347',
  ions: {
    NO3: millimolePerL(15),
    H2PO4: millimolePerL(1),
    SO4: millimolePerL(2),
    K: millimolePerL(6),
    Ca: millimolePerL(5),
    Mg: millimolePerL(2),
  },
};

/** @example recipeConductivityMsPerCm(HOAGLAND_2.ions, celsius(25)) // 2.21 */
export const HOAGLAND_2: Recipe = {
  name: 'Hoagland no. 2',
  source: 'Hoagland and Arnon 1938, 1950, California Agric. Exp. Station Circular 347; from memory',
  ions: {
    NO3: millimolePerL(14),
    NH4: millimolePerL(1),
    H2PO4: millimolePerL(1),
    SO4: millimolePerL(2),
    K: millimolePerL(6),
    Ca: millimolePerL(4),
    Mg: millimolePerL(2),
  },
};

/** @example recipeConductivityMsPerCm(STEINER.ions, celsius(25)) // 2.29 */
export const STEINER: Recipe = {
  name: 'Steiner',
  source: 'Steiner 1984, by De Rijck and Schrevens 1998, J. Plant Nutr. 21:2115',
  ions: {
    NO3: millimolePerL(12),
    H2PO4: millimolePerL(1),
    SO4: millimolePerL(3.5),
    K: millimolePerL(7),
    Ca: millimolePerL(4.5),
    Mg: millimolePerL(2),
  },
};

import { describe, expect, it } from 'vitest';
import { chargeSums } from '../../../src/science/conductivity/ionic-strength.ts';
import {
  HOAGLAND_1,
  HOAGLAND_2,
  type Recipe,
  STEINER,
} from '../../../src/science/solutions/recipes.ts';

/** Standard atomic weights, g/mol (IUPAC). */
const WEIGHT = { N: 14.007, P: 30.974, K: 39.098, Ca: 40.078, Mg: 24.305, S: 32.06 };

const elementsMgPerL = ({ ions }: Recipe) => ({
  nitrateN: (ions.NO3 ?? 0) * WEIGHT.N,
  ammoniumN: (ions.NH4 ?? 0) * WEIGHT.N,
  P: (ions.H2PO4 ?? 0) * WEIGHT.P,
  K: (ions.K ?? 0) * WEIGHT.K,
  Ca: (ions.Ca ?? 0) * WEIGHT.Ca,
  Mg: (ions.Mg ?? 0) * WEIGHT.Mg,
  S: (ions.SO4 ?? 0) * WEIGHT.S,
});

describe('published recipes', () => {
  // Milligrams of nitrate N, ammonium N, P, K, Ca, Mg and S in a litre as the sources print them.
  it.each([
    ['Hoagland and Arnon no. 1', HOAGLAND_1, [210, 0, 31, 235, 200, 48.6, 64]],
    ['Hoagland and Arnon no. 2 (from memory)', HOAGLAND_2, [196, 14, 31, 235, 160, 48.6, 64]],
  ] as const)('of %s hold the milligrams that their source prints', (_, recipe, printed) => {
    Object.values(elementsMgPerL(recipe)).forEach((mgPerL, index) => {
      expect(Math.abs(mgPerL - printed[index]!)).toBeLessThan(0.6);
    });
  });

  it('of Steiner 1984 hold the milligrams that De Rijck and Schrevens 1998 print, within 5 % for its rounded millimoles', () => {
    const printed = [167.8, 0, 30.7, 261.6, 184.8, 49.1, 111.6];
    Object.values(elementsMgPerL(STEINER)).forEach((mgPerL, index) => {
      expect(Math.abs(mgPerL - printed[index]!)).toBeLessThanOrEqual(0.05 * printed[index]!);
    });
  });

  it('hold as much positive as negative charge', () => {
    for (const recipe of [HOAGLAND_1, HOAGLAND_2, STEINER]) {
      const { cationsMeqPerL, anionsMeqPerL } = chargeSums(recipe.ions);
      expect(cationsMeqPerL, recipe.name).toBeCloseTo(anionsMeqPerL, 9);
    }
    expect(chargeSums(HOAGLAND_1.ions).cationsMeqPerL).toBe(20);
  });
});

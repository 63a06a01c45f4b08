import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ION_COEFFICIENTS, type Ion } from '../../../src/science/conductivity/ion-coefficients.ts';
import { ionConductivitySCm2PerMol } from '../../../src/science/conductivity/ion-conductivity.ts';
import {
  chargeSums,
  type IonAmounts,
  ionicStrengthMolPerL,
} from '../../../src/science/conductivity/ionic-strength.ts';
import { recipeConductivityMsPerCm } from '../../../src/science/conductivity/recipe-conductivity.ts';
import { rainPh } from '../../../src/science/ph/rain-ph.ts';
import { HOAGLAND_1, HOAGLAND_2, STEINER } from '../../../src/science/solutions/recipes.ts';
import { type MillimolePerL, millimolePerL } from '../../../src/science/units/concentration.ts';
import { celsius } from '../../../src/science/units/temperature.ts';
import { outsideFrom, valueOf } from '../holding.ts';
import { POTASSIUM_CHLORIDE_CRC } from './potassium-chloride-crc.ts';

/** Sum of the ions' shares without the limit that keeps the recipe formula to thin solutions. */
function summedMsPerCm(ions: IonAmounts, temperature: number): number {
  const strength = ionicStrengthMolPerL(ions);
  return (Object.entries(ions) as [Ion, MillimolePerL][]).reduce((sum, [ion, mmolPerL]) => {
    const molar = ionConductivitySCm2PerMol(ion, {
      waterCelsius: celsius(temperature),
      ionicStrengthMolPerL: strength,
    });
    return sum + (valueOf(molar) * mmolPerL) / 1000;
  }, 0);
}

const mmol = millimolePerL;
const salt = (name: 'KCl' | 'NaCl', amount: number): IonAmounts =>
  name === 'KCl' ? { K: mmol(amount), Cl: mmol(amount) } : { Na: mmol(amount), Cl: mmol(amount) };
/** Millimoles in a kilogram of water, from the percent by mass of a salt. */
const mmolFromPercent = (percent: number, molarMassGPerMol: number) =>
  ((percent * 10) / molarMassGPerMol / (1 - percent / 100)) * 1000;

describe('limiting conductivity of ions at 25 °C', () => {
  // CRC Handbook p. 5-76, S cm²/mol a charge.
  const crc: readonly (readonly [Ion, number])[] = [
    ['H', 349.65],
    ['K', 73.48],
    ['Na', 50.08],
    ['NH4', 73.5],
    ['Ca', 59.47 * 2],
    ['Mg', 53 * 2],
    ['Cl', 76.31],
    ['NO3', 71.42],
    ['SO4', 80 * 2],
    ['H2PO4', 36],
    ['HCO3', 44.5],
  ];

  it.each(crc)('of %s is %d within 1.6 %%, CRC Handbook p. 5-76', (ion, limiting) => {
    const ours = ionConductivitySCm2PerMol(ion, {
      waterCelsius: celsius(25),
      ionicStrengthMolPerL: 0,
    });
    expect(Math.abs(valueOf(ours) / limiting - 1)).toBeLessThan(0.016);
  });

  it('is checked for every ion', () => {
    expect(crc.map(([ion]) => ion).sort()).toEqual(Object.keys(ION_COEFFICIENTS).sort());
  });
});

describe('conductivity of pure salts by the ion model', () => {
  it('of 0.01 mol/kg KCl is that of the CRC Handbook within 1.4 % from 0 to 50 °C', () => {
    for (const [temperature, thin] of POTASSIUM_CHLORIDE_CRC) {
      const ratio = (summedMsPerCm(salt('KCl', 10), temperature) * 1000) / thin;
      expect(Math.abs(ratio - 1), `${temperature} °C`).toBeLessThan(0.014);
    }
  });

  it('of 0.1 mol/kg KCl is that of the CRC Handbook within 2 % from 0 to 50 °C', () => {
    for (const [temperature, , strong] of POTASSIUM_CHLORIDE_CRC) {
      const ratio = (summedMsPerCm(salt('KCl', 100), temperature) * 1000) / strong;
      expect(Math.abs(ratio - 1), `${temperature} °C`).toBeLessThan(0.02);
    }
  });

  // Molar conductivity in the literature, from memory; Onsager's limiting law beside it.
  it.each([
    ['KCl', 1, 146.88, 149.79],
    ['KCl', 10, 141.2, 149.79],
    ['NaCl', 1, 123.68, 126.39],
    ['NaCl', 10, 118.45, 126.39],
  ] as const)(
    'of %s at %d mmol/L agrees with the literature (from memory) and with Debye, Hückel and Onsager',
    (name, amount, literature, limiting) => {
      const molar = (summedMsPerCm(salt(name, amount), 25) / amount) * 1000;
      const onsager = limiting - (60.2 + 0.229 * limiting) * Math.sqrt(amount / 1000);
      expect(Math.abs(molar / literature - 1)).toBeLessThan(0.012);
      expect(Math.abs(molar / onsager - 1)).toBeLessThan(0.02);
    },
  );

  it.each([
    ['ammonium chloride 0.5 %', mmolFromPercent(0.5, 53.49), 'NH4Cl', 10.5, 0.08],
    ['ammonium chloride 1 %', mmolFromPercent(1, 53.49), 'NH4Cl', 20.4, 0.08],
    ['calcium chloride 0.5 %', mmolFromPercent(0.5, 110.98), 'CaCl2', 8.1, 0.07],
    ['nitric acid 0.5 %', mmolFromPercent(0.5, 63.01), 'HNO3', 28.4, 0.03],
    ['nitric acid 1 %', mmolFromPercent(1, 63.01), 'HNO3', 56.1, 0.03],
    ['ammonium sulfate 0.5 %', mmolFromPercent(0.5, 132.14), '(NH4)2SO4', 7.4, 0.05],
  ] as const)(
    'of %s is that of the CRC mass-percent table at 20 °C, a little high',
    (_, amount, formula, mSPerCm, tolerance) => {
      const ions: Record<typeof formula, IonAmounts> = {
        NH4Cl: { NH4: mmol(amount), Cl: mmol(amount) },
        CaCl2: { Ca: mmol(amount), Cl: mmol(2 * amount) },
        HNO3: { H: mmol(amount), NO3: mmol(amount) },
        '(NH4)2SO4': { NH4: mmol(2 * amount), SO4: mmol(amount) },
      };
      const ratio = summedMsPerCm(ions[formula], 20) / mSPerCm;
      expect(ratio).toBeGreaterThan(0.99);
      expect(ratio).toBeLessThan(1 + tolerance);
    },
  );

  it('of clean rain is near the 1.10 µS/cm of water in balance with air, CRC Handbook p. 5-73', () => {
    const ph = valueOf(rainPh({ carbonDioxidePpm: 420, waterCelsius: celsius(25) }));
    const hydrogen = 1000 * 10 ** -ph;
    const rain = recipeConductivityMsPerCm(
      { H: mmol(hydrogen), HCO3: mmol(hydrogen) },
      celsius(25),
    );
    expect(Math.abs((valueOf(rain) * 1000) / 1.1 - 1)).toBeLessThan(0.12);
  });

  it('of magnesium sulfate is half as much again as the CRC table, hence the limit on strength', () => {
    const amount = mmolFromPercent(0.5, 120.37);
    const ions = { Mg: mmol(amount), SO4: mmol(amount) };
    expect(summedMsPerCm(ions, 20) / 4.1).toBeCloseTo(1.49, 2);
    expect(outsideFrom(recipeConductivityMsPerCm(ions, celsius(20))).quantity).toBe(
      'ionic strength',
    );
  });
});

describe('conductivity of a recipe', () => {
  const at25 = (ions: IonAmounts) => valueOf(recipeConductivityMsPerCm(ions, celsius(25)));

  it('of Hoagland no. 1 lies within the accepted 2.0 to 2.3 mS/cm', () => {
    expect(at25(HOAGLAND_1.ions)).toBeGreaterThan(2);
    expect(at25(HOAGLAND_1.ions)).toBeLessThan(2.3);
  });

  it('keeps its regression values: 2.29 for Hoagland no. 1, 2.21 for no. 2, 2.29 for Steiner', () => {
    expect(at25(HOAGLAND_1.ions)).toBeCloseTo(2.29, 2);
    expect(at25(HOAGLAND_2.ions)).toBeCloseTo(2.21, 2);
    expect(at25(STEINER.ions)).toBeCloseTo(2.29, 2);
  });

  it('is within 15 % of three rules that take only the cations: Sonneveld, Savvas and Adamidis 1999, a tenth (from memory)', () => {
    const { cationsMeqPerL } = chargeSums(HOAGLAND_1.ions);
    expect(cationsMeqPerL).toBe(20);
    const sonneveld = 0.095 * cationsMeqPerL + 0.19;
    const savvas = (cationsMeqPerL + 1.462) / 9.819;
    expect(sonneveld).toBeCloseTo(2.09, 2);
    expect(savvas).toBeCloseTo(2.19, 2);
    for (const rule of [sonneveld, savvas, cationsMeqPerL / 10]) {
      expect(Math.abs(at25(HOAGLAND_1.ions) / rule - 1)).toBeLessThan(0.15);
    }
  });

  it('would be 2.68 mS/cm if ions did not hold each other back, which is what the model corrects', () => {
    const free = (Object.entries(HOAGLAND_1.ions) as [Ion, MillimolePerL][]).reduce(
      (sum, [ion, amount]) =>
        sum +
        (valueOf(
          ionConductivitySCm2PerMol(ion, { waterCelsius: celsius(25), ionicStrengthMolPerL: 0 }),
        ) *
          amount) /
          1000,
      0,
    );
    expect(free).toBeCloseTo(2.68, 1);
    expect(free).toBeGreaterThan(1.15 * at25(HOAGLAND_1.ions));
  });

  it('grows with every part of the recipe, but less than in proportion', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 1, noNaN: true }), (share) => {
        const thinned = Object.fromEntries(
          Object.entries(HOAGLAND_1.ions).map(([ion, amount]) => [ion, mmol(amount * share)]),
        );
        const whole = at25(HOAGLAND_1.ions);
        expect(at25(thinned)).toBeLessThanOrEqual(whole + 1e-12);
        expect(at25(thinned)).toBeGreaterThanOrEqual(share * whole - 1e-12);
      }),
    );
  });

  it('of nothing is nothing', () => {
    expect(at25({})).toBe(0);
  });

  it('is outside when an ion was forgotten or an amount is not one', () => {
    const forgotten = { Ca: mmol(5), K: mmol(6), NO3: mmol(6) };
    expect(outsideFrom(recipeConductivityMsPerCm(forgotten, celsius(25))).quantity).toBe(
      'charge imbalance',
    );
    const negative = { K: mmol(-1), Cl: mmol(-1) };
    expect(outsideFrom(recipeConductivityMsPerCm(negative, celsius(25))).quantity).toBe(
      'amount of an ion',
    );
  });
});

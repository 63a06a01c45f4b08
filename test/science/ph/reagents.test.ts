import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  phosphateAlkaliMeqPerL,
  protonYieldEqPerMol,
} from '../../../src/science/ph/proton-yield.ts';
import { reagentStrengthMolPerL } from '../../../src/science/ph/reagent-strength.ts';
import { reagentVolumeMl } from '../../../src/science/ph/reagent-volume.ts';
import {
  CITRIC_ACID,
  PHOSPHORIC_ACID,
  REAGENTS,
  type ReagentName,
} from '../../../src/science/ph/reagents.ts';
import { litre } from '../../../src/science/units/amount.ts';
import { milliequivalentPerL, millimolePerL } from '../../../src/science/units/concentration.ts';
import { outsideFrom, valueOf } from '../holding.ts';

const strength = (name: ReagentName) => valueOf(reagentStrengthMolPerL(REAGENTS[name]));

describe('strength of acids and alkalis', () => {
  it.each([
    ['phosphoric acid 85 %', 14.6],
    ['phosphoric acid 75 %', 12.0],
    ['nitric acid 70 %', 15.7],
    ['nitric acid 38 %', 7.44],
    ['potassium hydroxide 45 %', 11.7],
    ['hydrochloric acid 37 %', 12.1],
    ['sulfuric acid 96 %', 18.0],
    ['citric acid 50 %', 3.23],
  ] as const)('of %s is %d mol/L, regression value over densities from memory', (name, molPerL) => {
    expect(Math.abs(strength(name) / molPerL - 1)).toBeLessThan(0.005);
  });

  /** Calcium carbonate neutralised by a US fluid ounce in a hundred US gallons, mg/L. */
  const extensionTable = (strengthMolPerL: number, yieldEqPerMol: number) =>
    ((strengthMolPerL * yieldEqPerMol * 29.5735) / 378.541) * 50.04;

  it('of 93 % sulfuric acid neutralises 136.0 mg/L a fluid ounce in 100 gallons, extension table', () => {
    const sulfuric = reagentStrengthMolPerL({
      massShare: 0.93,
      densityKgPerL: 1.835,
      molarMassGPerMol: 98.08,
    });
    expect(Math.abs(extensionTable(valueOf(sulfuric), 2) - 136)).toBeLessThan(0.2);
  });

  it('of 75 % phosphoric acid is within 10 % of the 45.0 mg/L of the same table', () => {
    const atFinalPh = valueOf(protonYieldEqPerMol(PHOSPHORIC_ACID, 5.8));
    const neutralised = extensionTable(strength('phosphoric acid 75 %'), atFinalPh);
    expect(Math.abs(neutralised / 45 - 1)).toBeLessThan(0.1);
  });

  it('is outside for a mass share in percent', () => {
    const percent = { ...REAGENTS['nitric acid 38 %'], massShare: 38 };
    expect(outsideFrom(reagentStrengthMolPerL(percent)).quantity).toBe('mass share');
  });
});

describe('protons of an acid', () => {
  it.each([
    [5.0, 1.005, 1.66],
    [5.5, 1.019, 1.96],
    [5.8, 1.038, 2.12],
    [6.0, 1.06, 2.24],
    [6.5, 1.167, 2.55],
  ])(
    'at pH %d are those of phosphoric and citric acid (pKa from memory)',
    (ph, phosphoric, citric) => {
      expect(valueOf(protonYieldEqPerMol(PHOSPHORIC_ACID, ph))).toBeCloseTo(phosphoric, 2);
      expect(valueOf(protonYieldEqPerMol(CITRIC_ACID, ph))).toBeCloseTo(citric, 2);
    },
  );

  it('of phosphoric acid agree with the two-step law of Henderson and Hasselbalch from pH 4 to 9', () => {
    fc.assert(
      fc.property(fc.double({ min: 4, max: 9, noNaN: true }), (ph) => {
        const short = 1 / (1 + 10 ** (2.148 - ph)) + 1 / (1 + 10 ** (7.198 - ph));
        expect(Math.abs(valueOf(protonYieldEqPerMol(PHOSPHORIC_ACID, ph)) - short)).toBeLessThan(
          0.001,
        );
      }),
    );
  });

  it('are one of nitric acid and two of sulfuric acid at any pH', () => {
    expect(valueOf(protonYieldEqPerMol(REAGENTS['nitric acid 38 %'].protons, 5))).toBe(1);
    expect(valueOf(protonYieldEqPerMol(REAGENTS['sulfuric acid 96 %'].protons, 7))).toBe(2);
  });

  it('grow with the pH and never pass the number of steps', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(PHOSPHORIC_ACID, CITRIC_ACID),
        fc.double({ min: 3.5, max: 9.9, noNaN: true }),
        (acid, ph) => {
          const here = valueOf(protonYieldEqPerMol(acid, ph));
          expect(valueOf(protonYieldEqPerMol(acid, ph + 0.1))).toBeGreaterThan(here);
          expect(here).toBeLessThan(3);
        },
      ),
    );
  });

  it('of the phosphate in a solution swallow 0.075 meq/L of alkali from 5.4 to 6.2, and give it back', () => {
    const phosphateMmolPerL = millimolePerL(1);
    const up = phosphateAlkaliMeqPerL({ phosphateMmolPerL, presentPh: 5.4, targetPh: 6.2 });
    const down = phosphateAlkaliMeqPerL({ phosphateMmolPerL, presentPh: 6.2, targetPh: 5.4 });
    expect(valueOf(up)).toBeCloseTo(0.075, 2);
    expect(valueOf(down)).toBeCloseTo(0 - valueOf(up), 12);
  });

  it('are outside below pH 3.5', () => {
    expect(outsideFrom(protonYieldEqPerMol(CITRIC_ACID, 2)).quantity).toBe('pH');
  });
});

describe('volume of a reagent', () => {
  it('of 10 mol/L for 1 meq/L in 100 L is 10 mL', () => {
    const dose = reagentVolumeMl({
      reservoirL: litre(100),
      doseMeqPerL: milliequivalentPerL(1),
      strengthMolPerL: 10,
      yieldEqPerMol: 1,
    });
    expect(valueOf(dose)).toBeCloseTo(10, 12);
  });

  it('carries just the charge that was asked for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1000, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        (volume, meqPerL, strengthMolPerL, yieldEqPerMol) => {
          const dose = reagentVolumeMl({
            reservoirL: litre(volume),
            doseMeqPerL: milliequivalentPerL(meqPerL),
            strengthMolPerL,
            yieldEqPerMol,
          });
          const carriedMeq = valueOf(dose) * strengthMolPerL * yieldEqPerMol;
          expect(carriedMeq).toBeCloseTo(volume * meqPerL, 6);
        },
      ),
    );
  });

  it('is outside for a reagent that is nothing but water', () => {
    const water = reagentVolumeMl({
      reservoirL: litre(100),
      doseMeqPerL: milliequivalentPerL(1),
      strengthMolPerL: 0,
      yieldEqPerMol: 1,
    });
    expect(outsideFrom(water).quantity).toBe('strength');
  });
});

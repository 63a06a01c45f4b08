/** Acids and alkalis that growers buy. */
export type ReagentName =
  | 'phosphoric acid 85 %'
  | 'phosphoric acid 75 %'
  | 'nitric acid 70 %'
  | 'nitric acid 38 %'
  | 'hydrochloric acid 37 %'
  | 'sulfuric acid 96 %'
  | 'citric acid 50 %'
  | 'potassium hydroxide 45 %';

/** How a substance gives or takes protons: pKa of its steps, or a fixed number that is always given. */
export type Protons =
  | { readonly kind: 'weak'; readonly pKa: readonly number[] }
  | { readonly kind: 'strong'; readonly perMol: number };

/** Goldberg and others 2002, J. Phys. Chem. Ref. Data 31:231, at 25 °C; from memory. */
export const PHOSPHORIC_ACID: Protons = { kind: 'weak', pKa: [2.148, 7.198, 12.35] };
/** At 25 °C; from memory. */
export const CITRIC_ACID: Protons = { kind: 'weak', pKa: [3.128, 4.761, 6.396] };
const ONE: Protons = { kind: 'strong', perMol: 1 };
const TWO: Protons = { kind: 'strong', perMol: 2 };

export interface Reagent {
  readonly side: 'acid' | 'alkali';
  readonly massShare: number;
  readonly densityKgPerL: number;
  readonly molarMassGPerMol: number;
  readonly protons: Protons;
}

const acid = (
  massShare: number,
  densityKgPerL: number,
  molarMassGPerMol: number,
  protons: Protons,
): Reagent => ({ side: 'acid', massShare, densityKgPerL, molarMassGPerMol, protons });

/** Densities at 20 °C, from memory; the label on the bottle stands above them. */
export const REAGENTS: Readonly<Record<ReagentName, Reagent>> = {
  'phosphoric acid 85 %': acid(0.85, 1.685, 97.99, PHOSPHORIC_ACID),
  'phosphoric acid 75 %': acid(0.75, 1.573, 97.99, PHOSPHORIC_ACID),
  'nitric acid 70 %': acid(0.7, 1.413, 63.01, ONE),
  'nitric acid 38 %': acid(0.38, 1.234, 63.01, ONE),
  'hydrochloric acid 37 %': acid(0.37, 1.19, 36.46, ONE),
  'sulfuric acid 96 %': acid(0.96, 1.84, 98.08, TWO),
  'citric acid 50 %': acid(0.5, 1.24, 192.12, CITRIC_ACID),
  'potassium hydroxide 45 %': {
    side: 'alkali',
    massShare: 0.45,
    densityKgPerL: 1.456,
    molarMassGPerMol: 56.11,
    protons: ONE,
  },
};

/** Ions of a nutrient solution and of the water it is made from. */
export type Ion = 'H' | 'Na' | 'K' | 'NH4' | 'Ca' | 'Mg' | 'Cl' | 'NO3' | 'SO4' | 'HCO3' | 'H2PO4';

/**
 * What an ion adds to conductivity. `limiting` (λ°) and `slope` (A) are polynomials in the temperature
 * in °C: [a, b, c] for a t² + b t + c, in S cm²/mol; `size` is B.
 */
export interface IonCoefficients {
  readonly charge: number;
  readonly limiting: readonly [number, number, number];
  readonly slope: readonly [number, number, number];
  readonly size: number;
}

/**
 * McCleskey, Nordstrom, Ryan and Ball 2012, Geochim. Cosmochim. Acta 77:369. The figures are from
 * memory; the tests hold them against the conductivity of pure salts in the CRC Handbook. The t²
 * terms of H⁺ (both) and of A for HCO3⁻ are negative; copies that lost the sign are about.
 *
 * H2PO4⁻ is not in that table. Its λ° is that of the CRC Handbook (36 at 25 °C), with 2 % a degree,
 * its A Onsager's limit; it carries 2 % of a nutrient solution's conductivity.
 */
export const ION_COEFFICIENTS: Readonly<Record<Ion, IonCoefficients>> = {
  H: {
    charge: 1,
    limiting: [-0.01414, 5.355, 224.2],
    slope: [-0.00918, 1.842, 39.23],
    size: 0.3,
  },
  Na: { charge: 1, limiting: [0.003763, 0.877, 26.23], slope: [0.00027, 1.141, 32.07], size: 1.7 },
  K: { charge: 1, limiting: [0.003046, 1.261, 40.7], slope: [0.00535, 0.9316, 22.59], size: 1.5 },
  NH4: { charge: 1, limiting: [0.003341, 1.285, 39.04], slope: [0.00132, 0.607, 11.19], size: 0.3 },
  Ca: { charge: 2, limiting: [0.009645, 1.984, 62.28], slope: [0.03174, 2.334, 132.3], size: 2.8 },
  Mg: { charge: 2, limiting: [0.01068, 1.695, 57.16], slope: [0.02453, 1.915, 80.5], size: 2.1 },
  Cl: {
    charge: -1,
    limiting: [0.003817, 1.337, 40.99],
    slope: [0.00613, 0.9469, 22.01],
    size: 1.5,
  },
  NO3: {
    charge: -1,
    limiting: [0.001925, 1.214, 39.9],
    slope: [0.00118, 0.5045, 23.31],
    size: 0.1,
  },
  SO4: { charge: -2, limiting: [0.01037, 2.838, 82.37], slope: [0.03324, 5.889, 193.5], size: 2.6 },
  HCO3: {
    charge: -1,
    limiting: [0.000614, 0.9048, 21.14],
    slope: [-0.00503, 0.8957, 10.97],
    size: 0.1,
  },
  H2PO4: { charge: -1, limiting: [0, 0.72, 18], slope: [0, 0.766, 19.2], size: 1.5 },
};

/**
 * Conductivity of potassium chloride of 0.01 and 0.1 mol/kg, µS/cm by °C: CRC Handbook of Chemistry
 * and Physics, p. 5-73, after Pratt and Wu (NIST).
 */
export const POTASSIUM_CHLORIDE_CRC: readonly (readonly [
  temperature: number,
  thinUsPerCm: number,
  strongUsPerCm: number,
])[] = [
  [0, 772.92, 7116.85],
  [5, 890.96, 8183.7],
  [10, 1013.95, 9291.72],
  [15, 1141.45, 10437.1],
  [18, 1219.93, 11140.6],
  [20, 1273.03, 11615.9],
  [25, 1408.23, 12824.6],
  [30, 1546.63, 14059.2],
  [35, 1687.79, 15316.0],
  [40, 1831.27, 16591.0],
  [50, 2123.43, 19180.9],
];

import { milligramPerL } from '../units/concentration.ts';

/**
 * Dissolved oxygen that roots want. Common practice, backed by trials: cucumber took up water almost
 * undiminished down to 6.4 mg/L and a fifth less at 3.2 (25 °C); tomato grew less at 1 to 2 mg/L,
 * cucumber at 33 °C too (Rong and Tachibana 1997, J. Japan. Soc. Hort. Sci. 66:331).
 */
export const ROOT_OXYGEN = {
  /** Above this nothing is to be done. */
  wantedMgPerL: milligramPerL(5),
  /** From here on it is worth a word. */
  lowMgPerL: milligramPerL(3),
  /** From here on roots suffer. */
  harmfulMgPerL: milligramPerL(2),
} as const;

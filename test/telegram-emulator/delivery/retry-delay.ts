/** As the public server's source has it, but for the little randomness that it adds at the top. */
const LONGEST_DELAY_S = 60;

/**
 * How long a webhook is left alone after so many failures in a row: tried again at once after the first,
 * then after 2, 4, 8 … seconds, at most a minute.
 */
export const retryDelayS = (failures: number): number =>
  failures <= 1 ? 0 : Math.min(2 ** (failures - 1), LONGEST_DELAY_S);

/**
 * What the concentrates of a greenhouse add: mS/cm by 1 mL/L of each. A belief in ln, normal, so that
 * a mix that came out half as strong weighs like one that came out twice as strong.
 */
export interface StrengthResponse {
  readonly lnMean: number;
  readonly lnVariance: number;
  readonly trials: number;
}

/** Two readings of EC, each some hundredths off. */
const READING_SD_MS_PER_CM = 0.06;
/** Litres and spoons are as good as hands are. */
const HANDLING_LN_SD = 0.1;
/** Bottles are changed. */
const KEPT_LN_SD = 0.08;
/** A smaller rise than this says nothing. */
const LEAST_RISE_MS_PER_CM = 0.05;

export function presumedStrength(riseMsPerCmByMlPerL: number, lnSd: number): StrengthResponse {
  return { lnMean: Math.log(riseMsPerCmByMlPerL), lnVariance: lnSd * lnSd, trials: 0 };
}

/** After a mix that was measured: `riseMsPerCm` came of `eachMlPerL` of both concentrates. */
export function afterMix(
  before: StrengthResponse,
  mix: { readonly riseMsPerCm: number; readonly eachMlPerL: number },
): StrengthResponse {
  const { riseMsPerCm, eachMlPerL } = mix;
  if (riseMsPerCm < LEAST_RISE_MS_PER_CM || !(eachMlPerL > 0)) return before;
  const seen = Math.log(riseMsPerCm / eachMlPerL);
  const seenVariance = HANDLING_LN_SD ** 2 + (READING_SD_MS_PER_CM / riseMsPerCm) ** 2;
  const variance = before.lnVariance + KEPT_LN_SD ** 2;
  const gain = variance / (variance + seenVariance);
  return {
    lnMean: before.lnMean + gain * (seen - before.lnMean),
    lnVariance: (1 - gain) * variance,
    trials: before.trials + 1,
  };
}

/** The rise at so many standard deviations above what is most likely, mS/cm by mL/L. */
export function riseAt(response: StrengthResponse, standardDeviations: number): number {
  return Math.exp(response.lnMean + standardDeviations * Math.sqrt(response.lnVariance));
}

import type { StockItem } from '../greenhouse/greenhouse.ts';
import type { DoseBasis } from './advice-reason.ts';

/**
 * pH products are sold from about 1 meq/mL (diluted for the home) to about 12 (concentrates for the
 * trade); without a label this is the middle, and the spread in ln covers the ends. Common practice.
 */
const USUAL_MEQ_PER_ML = 3;
const UNLABELLED_LN_SD = 1.1;
/** With a label it is the buffer that is not known. */
const LABELLED_LN_SD = 0.8;
/** The more alkalinity the water brings, the less is known of what is left of it. */
const ALKALINITY_LN_SD_PER_MEQ = 0.15;
const MOST_ALKALINITY_LN_SD = 0.6;

/** Two-part concentrates, 1 mL/L of each: common practice from labels, half as much to twice as much. */
const USUAL_RISE_MS_PER_CM = 0.35;
const UNLABELLED_RISE_LN_SD = 0.45;
const LABELLED_RISE_LN_SD = 0.12;

/** A strength with the spread of ln that it may be off by, and where it comes from. */
export interface PresumedStrength {
  readonly strength: number;
  readonly lnSd: number;
  readonly basis: DoseBasis;
}

/** meq/mL of a pH product, and how far its effect in this water may be off. */
export function presumedPhStrength(
  item: StockItem,
  waterAlkalinityMeqPerL: number,
): PresumedStrength {
  const ofWater = Math.min(
    MOST_ALKALINITY_LN_SD,
    ALKALINITY_LN_SD_PER_MEQ * waterAlkalinityMeqPerL,
  );
  const { meqPerMl } = item;
  const strength = meqPerMl ?? USUAL_MEQ_PER_ML;
  return {
    strength,
    lnSd: Math.hypot(meqPerMl === undefined ? UNLABELLED_LN_SD : LABELLED_LN_SD, ofWater),
    basis: { kind: meqPerMl === undefined ? 'usual-strength' : 'label', strength },
  };
}

/** mS/cm that 1 mL/L of each concentrate adds. */
export function presumedRise(item: StockItem): PresumedStrength {
  const { riseMsPerCmByMlPerL } = item;
  const strength = riseMsPerCmByMlPerL ?? USUAL_RISE_MS_PER_CM;
  return riseMsPerCmByMlPerL === undefined
    ? { strength, lnSd: UNLABELLED_RISE_LN_SD, basis: { kind: 'usual-strength', strength } }
    : { strength, lnSd: LABELLED_RISE_LN_SD, basis: { kind: 'label', strength } };
}

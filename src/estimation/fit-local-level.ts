import { filterLocalLevel, type LocalLevelModel, type Reading } from './local-level.ts';

/** The ratio of wandering (a day) to reading error is looked for in this range. */
const LN_RATIO_FROM = -12;
const LN_RATIO_TO = 8;
/** Golden-section steps; the bracket shrinks below 1e-8. */
const STEPS = 60;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The model under which the readings are most likely, or null where fewer than three values say too
 * little. Only the ratio of the two variances is searched: for each ratio the best reading variance
 * is the mean of the squared, standardised surprises (the concentrated likelihood).
 *
 * Source: Durbin and Koopman 2012, section 2.10.2.
 */
export function fitLocalLevel(readings: readonly Reading[]): LocalLevelModel | null {
  const values = readings.filter(({ value }) => value !== null).length;
  if (values < 3) return null;
  let from = LN_RATIO_FROM;
  let to = LN_RATIO_TO;
  for (let step = 0; step < STEPS; step += 1) {
    const lower = to - GOLDEN * (to - from);
    const upper = from + GOLDEN * (to - from);
    if (profile(readings, lower).logLikelihood > profile(readings, upper).logLikelihood) to = upper;
    else from = lower;
  }
  return profile(readings, (from + to) / 2).model;
}

function profile(
  readings: readonly Reading[],
  lnRatio: number,
): { readonly model: LocalLevelModel; readonly logLikelihood: number } {
  const ratio = Math.exp(lnRatio);
  const unit = filterLocalLevel(readings, { readingVar: 1, levelVarPerDay: ratio });
  let squares = 0;
  let count = 0;
  let position = 0;
  for (const { value } of readings) {
    const level = unit.levels[position];
    if (value === null && position === 0) continue;
    position += 1;
    if (value === null || !level?.foreseen) continue;
    squares += (value - level.foreseen.mean) ** 2 / (level.foreseen.variance + 1);
    count += 1;
  }
  const readingVar = Math.max(squares / count, Number.MIN_VALUE);
  const logLikelihood =
    unit.logLikelihood + 0.5 * squares - 0.5 * count * (Math.log(readingVar) + 1);
  return { model: { readingVar, levelVarPerDay: ratio * readingVar }, logLikelihood };
}

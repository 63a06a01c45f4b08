import { fitLocalLevel } from './fit-local-level.ts';
import { filterLocalLevel, foreseeReading, type LocalLevelModel } from './local-level.ts';

/** What a probe was off by in a reference when it was calibrated, oldest first. */
export interface ProbeError {
  readonly atMs: number;
  readonly error: number;
}

const DAY_MS = 86_400_000;
/** Fitted wandering is taken between these multiples of the usual: few calibrations say little. */
const LEAST_MULTIPLE = 0.25;
const MOST_MULTIPLE = 4;

/**
 * In how many days from `nowMs` a probe set right at its last calibration may be off by more than
 * `tolerance` (one standard deviation), from its own history of errors: each error is what it wandered
 * since the calibration before. Null without a calibration; bounded by `latestDays`.
 */
export function daysUntilCalibration(
  errors: readonly ProbeError[],
  usual: LocalLevelModel,
  tolerance: number,
  latestDays: number,
  nowMs: number,
): number | null {
  const last = errors.at(-1);
  if (!last) return null;
  const model = modelOf(errors, usual);
  const since = (nowMs - last.atMs) / DAY_MS;
  for (let days = 0; days < latestDays; days += 1) {
    const { sd } = foreseeReading({ mean: 0, variance: 0 }, since + days, model);
    if (sd > tolerance) return days;
  }
  return latestDays;
}

/** The errors add up to the path of a probe that nobody sets right: a local level. */
function modelOf(errors: readonly ProbeError[], usual: LocalLevelModel): LocalLevelModel {
  let value = 0;
  let beforeMs = errors[0]!.atMs;
  const path = errors.map(({ atMs, error }) => {
    value += error;
    const daysSince = (atMs - beforeMs) / DAY_MS;
    beforeMs = atMs;
    return { daysSince, value };
  });
  const fitted = fitLocalLevel(path);
  if (!fitted) return usual;
  const found = filterLocalLevel(path, fitted).logLikelihood;
  const expected = filterLocalLevel(path, usual).logLikelihood;
  // Akaike's price for two fitted figures: keep the usual unless the history clearly says otherwise.
  if (found - expected < 2) return usual;
  const within = (x: number, mid: number) =>
    Math.min(MOST_MULTIPLE * mid, Math.max(LEAST_MULTIPLE * mid, x));
  return {
    readingVar: within(fitted.readingVar, usual.readingVar),
    levelVarPerDay: within(fitted.levelVarPerDay, usual.levelVarPerDay),
  };
}

/**
 * The local level model: a quantity wanders by itself and is read with an error.
 *
 *     reading = level + ε, ε ~ N(0, readingVar);  level changes by N(0, levelVarPerDay · days)
 *
 * Nothing is known of the level before the first reading (exact diffuse start), so the first reading
 * sets it and the likelihood begins with the second. Irregular intervals only stretch the wandering.
 *
 * Source: Durbin and Koopman 2012, Time Series Analysis by State Space Methods, chapter 2.
 */
export interface LocalLevelModel {
  readonly readingVar: number;
  readonly levelVarPerDay: number;
}

export interface Reading {
  /** Days since the reading before; of no meaning for the first. */
  readonly daysSince: number;
  /** Null: nothing was read. */
  readonly value: number | null;
}

/** The level at one reading. All variances in the reading's unit squared. */
export interface FilteredLevel {
  /** Before the reading; null while nothing is known. */
  readonly foreseen: { readonly mean: number; readonly variance: number } | null;
  /** After it. */
  readonly mean: number;
  readonly variance: number;
}

export interface LocalLevelRun {
  /** One for each reading from the first value on. */
  readonly levels: readonly FilteredLevel[];
  /** Natural logarithm of the density of all values after the first. */
  readonly logLikelihood: number;
}

/** The Kalman filter of the model. */
export function filterLocalLevel(
  readings: readonly Reading[],
  { readingVar, levelVarPerDay }: LocalLevelModel,
): LocalLevelRun {
  const levels: FilteredLevel[] = [];
  let logLikelihood = 0;
  let known: { readonly mean: number; readonly variance: number } | null = null;
  for (const { daysSince, value } of readings) {
    if (known === null) {
      if (value === null) continue;
      known = { mean: value, variance: readingVar };
      levels.push({ foreseen: null, ...known });
      continue;
    }
    const foreseen: { mean: number; variance: number } = {
      mean: known.mean,
      variance: known.variance + levelVarPerDay * daysSince,
    };
    if (value === null) {
      known = foreseen;
    } else {
      const surprise = value - foreseen.mean;
      const surpriseVar = foreseen.variance + readingVar;
      const gain = foreseen.variance / surpriseVar;
      known = {
        mean: foreseen.mean + gain * surprise,
        variance: foreseen.variance * (1 - gain),
      };
      logLikelihood -= 0.5 * (Math.log(2 * Math.PI * surpriseVar) + surprise ** 2 / surpriseVar);
    }
    levels.push({ foreseen, ...known });
  }
  return { levels, logLikelihood };
}

/** The level at each reading given all readings, by going backwards over a run of the filter. */
export function smoothLocalLevel(
  levels: readonly FilteredLevel[],
): readonly { readonly mean: number; readonly variance: number }[] {
  const smoothed: { mean: number; variance: number }[] = [];
  let later: { mean: number; variance: number } | null = null;
  for (let i = levels.length - 1; i >= 0; i -= 1) {
    const { mean, variance } = levels[i]!;
    const next: FilteredLevel['foreseen'] = levels[i + 1]?.foreseen ?? null;
    if (later === null || next === null) {
      later = { mean, variance };
    } else {
      const share: number = variance / next.variance;
      later = {
        mean: mean + share * (later.mean - next.mean),
        variance: variance + share ** 2 * (later.variance - next.variance),
      };
    }
    smoothed.push(later);
  }
  return smoothed.reverse();
}

/** What a reading `days` after the last one is expected to show. */
export function foreseeReading(
  last: { readonly mean: number; readonly variance: number },
  days: number,
  { readingVar, levelVarPerDay }: LocalLevelModel,
): { readonly mean: number; readonly sd: number } {
  return { mean: last.mean, sd: Math.sqrt(last.variance + levelVarPerDay * days + readingVar) };
}

/** The share of a surprise that the level takes up in the long run, with a reading every `days`. */
export function steadyGain(model: LocalLevelModel, days: number): number {
  const ratio = (model.levelVarPerDay * days) / model.readingVar;
  const foreseen = (ratio + Math.sqrt(ratio * ratio + 4 * ratio)) / 2;
  return foreseen / (foreseen + 1);
}

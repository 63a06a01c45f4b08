import type { Reading } from './local-level.ts';

/**
 * The local linear trend model: a level with a slope, both wandering, read with an error.
 *
 *     reading = level + ε;  level += slope + N(0, levelVarPerDay);  slope += N(0, slopeVarPerDay)
 *
 * each day; a broken day does its share. Nothing is known of level and slope before the first two
 * values (exact diffuse start), so the likelihood begins with the third.
 *
 * Source: Durbin and Koopman 2012, section 3.2.
 */
export interface LocalTrendModel {
  readonly readingVar: number;
  readonly levelVarPerDay: number;
  readonly slopeVarPerDay: number;
}

/** Level and slope a day, with their variances and covariance. */
export interface Trend {
  readonly level: number;
  readonly slopePerDay: number;
  readonly levelVar: number;
  readonly slopeVar: number;
  readonly covariance: number;
}

export interface LocalTrendRun {
  /** After each value from the second on. */
  readonly trends: readonly Trend[];
  readonly logLikelihood: number;
}

/** The Kalman filter of the model. Missing values are passed over by adding up their days. */
export function filterLocalTrend(
  readings: readonly Reading[],
  model: LocalTrendModel,
): LocalTrendRun {
  const trends: Trend[] = [];
  let logLikelihood = 0;
  let first: number | null = null;
  let trend: Trend | null = null;
  let days = 0;
  for (const { daysSince, value } of readings) {
    days += daysSince;
    if (value === null) continue;
    if (first === null) {
      first = value;
    } else if (trend === null) {
      trend = trendOfTwo(first, value, days, model);
      trends.push(trend);
    } else {
      const learned = learn(trendAhead(trend, days, model), value, model);
      trend = learned.trend;
      logLikelihood += learned.logDensity;
      trends.push(trend);
    }
    days = 0;
  }
  return { trends, logLikelihood };
}

/** What two values say when nothing was known before. */
export function trendOfTwo(
  first: number,
  second: number,
  days: number,
  { readingVar, levelVarPerDay, slopeVarPerDay }: LocalTrendModel,
): Trend {
  return {
    level: second,
    slopePerDay: (second - first) / days,
    levelVar: readingVar,
    slopeVar: (2 * readingVar + levelVarPerDay * days) / days ** 2 + slopeVarPerDay * days,
    covariance: readingVar / days,
  };
}

/** The trend some days on, without a reading. */
export function trendAhead(trend: Trend, days: number, model: LocalTrendModel): Trend {
  let { level, levelVar, slopeVar, covariance } = trend;
  for (let left = days; left > 0; left -= 1) {
    const step = Math.min(1, left);
    level += step * trend.slopePerDay;
    levelVar += step * (2 * covariance + step * slopeVar + model.levelVarPerDay);
    covariance += step * slopeVar;
    slopeVar += step * model.slopeVarPerDay;
  }
  return { level, slopePerDay: trend.slopePerDay, levelVar, slopeVar, covariance };
}

/** The trend after a reading, and the log density the reading had been foreseen with. */
export function learn(
  foreseen: Trend,
  value: number,
  { readingVar }: LocalTrendModel,
): { readonly trend: Trend; readonly logDensity: number } {
  const surprise = value - foreseen.level;
  const surpriseVar = foreseen.levelVar + readingVar;
  const levelGain = foreseen.levelVar / surpriseVar;
  const slopeGain = foreseen.covariance / surpriseVar;
  return {
    trend: {
      level: foreseen.level + levelGain * surprise,
      slopePerDay: foreseen.slopePerDay + slopeGain * surprise,
      levelVar: foreseen.levelVar * (1 - levelGain),
      slopeVar: foreseen.slopeVar - slopeGain * foreseen.covariance,
      covariance: foreseen.covariance * (1 - levelGain),
    },
    logDensity: -0.5 * (Math.log(2 * Math.PI * surpriseVar) + surprise ** 2 / surpriseVar),
  };
}

import { simpleSmoothingLevels } from './simple-smoothing.js';

/** Weight of the newest period in the level that errors are taken from. */
const LEVEL_ALPHA = 0.1;
/** Errors are forgotten three times as slowly as levels: a spread needs more of them. */
const FORGETTING = LEVEL_ALPHA / 3;
/** A level of nearly 0 is no measure of a spread. */
const LEAST_LEVEL = 0.05;
/** Supposed variance over mean, with as much weight as so many units of demand. */
const ASSUMED_DISPERSION = 1.5;
const ASSUMED_WEIGHT = 3;

/**
 * Variance over mean of the counts of a period, by squared errors of one-step forecasts, after each number of periods
 * seen: entry t knows the first t periods. At least 1, for fewer than Poisson's spread is not believed.
 */
export function countDispersions(series: ArrayLike<number>): Float64Array {
  const levels = simpleSmoothingLevels(series, LEVEL_ALPHA);
  const dispersions = new Float64Array(series.length + 1);
  let errors = 0;
  let expected = 0;
  for (let seen = 0; seen <= series.length; seen++) {
    dispersions[seen] = Math.max(
      1,
      (errors + ASSUMED_WEIGHT * ASSUMED_DISPERSION) / (expected + ASSUMED_WEIGHT),
    );
    if (seen === 0) continue; // Nothing was foretold of the first period.
    const level = levels[seen] ?? 0;
    errors = errors * (1 - FORGETTING) + ((series[seen] ?? 0) - level) ** 2;
    expected = expected * (1 - FORGETTING) + Math.max(level, LEAST_LEVEL);
  }
  return dispersions;
}

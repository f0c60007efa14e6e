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
 * Variance over mean of the counts of a period by squared errors of one-step forecasts, those of late counting more, after
 * each number of periods seen: entry t knows the first t periods. At least 1.
 */
export function recentDispersions(series: ArrayLike<number>): Float64Array {
  const levels = simpleSmoothingLevels(series, LEVEL_ALPHA);
  const dispersions = new Float64Array(series.length + 1);
  let errors = 0;
  let expected = 0;
  for (let seen = 0; seen <= series.length; seen++) {
    dispersions[seen] = dispersion(errors, expected);
    if (seen === 0) continue; // Nothing was foretold of the first period.
    const level = levels[seen] ?? 0;
    errors = errors * (1 - FORGETTING) + ((series[seen] ?? 0) - level) ** 2;
    expected = expected * (1 - FORGETTING) + Math.max(level, LEAST_LEVEL);
  }
  return dispersions;
}

/** Variance over mean of all counts seen, after each number of periods seen: entry t knows the first t. At least 1. */
export function sizeDispersions(series: ArrayLike<number>): Float64Array {
  const dispersions = new Float64Array(series.length + 1);
  let sum = 0;
  let mean = 0;
  // Welford 1962, Technometrics 4:419: differences from the running mean, since squares of large counts cancel.
  let squares = 0;
  for (let seen = 0; seen <= series.length; seen++) {
    const variance = seen > 1 ? squares / (seen - 1) : 0;
    dispersions[seen] = dispersion(variance * seen, sum);
    const count = series[seen] ?? 0;
    const difference = count - mean;
    sum += count;
    mean += difference / (seen + 1);
    squares += difference * (count - mean);
  }
  return dispersions;
}

/** Drawn towards what is assumed while little was seen; fewer than Poisson's spread is not believed. */
function dispersion(squares: number, expected: number): number {
  return Math.max(1, (squares + ASSUMED_WEIGHT * ASSUMED_DISPERSION) / (expected + ASSUMED_WEIGHT));
}

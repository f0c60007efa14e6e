import { componentProbability } from './count-distribution.js';
import { candidateForecasts, forecastCandidates } from './forecast-candidates.js';

/** Fewer periods tell nothing of a method. */
export const FEWEST_PERIODS = 6;
/** Beyond so large sums a bootstrap costs much and tells no more than the others. */
const LARGEST_DRAWN_SUM = 2_000;
/** Share of a broad distribution in what is scored: one surprise alone does not condemn a method. */
const BROAD_SHARE = 0.03;

/** How the candidates would have foretold a series, each time from what came before. */
export interface Backtest {
  horizonPeriods: number;
  /** How many times it was foretold. */
  origins: number;
  /** Of each candidate: sum over the origins of the logarithm of the chance it had given to what came; nearer to 0 is better. */
  logScores: Float64Array;
}

/**
 * Lets every candidate foretell the sum of the next periods from each period of the past (rolling origin), and scores the
 * chance it gave to the sum that came.
 *
 * The logarithmic score (Good 1952, J. R. Stat. Soc. B 14:107–114) is proper: no other distribution than the one believed
 * in has a better expectation. That holds as well for what is scored here: a distribution with a small share of a broad one.
 *
 * @param series whole numbers, at least 0, the oldest first
 */
export function backtest(series: readonly number[], horizonPeriods: number): Backtest {
  const logScores = new Float64Array(forecastCandidates.length);
  const forecasts = candidateForecasts(series, horizonPeriods);
  const tooLarge = largestOf(series) * horizonPeriods > LARGEST_DRAWN_SUM;
  let origins = 0;
  let before = series.slice(0, FEWEST_PERIODS).reduce((sum, count) => sum + count, 0);
  for (let seen = FEWEST_PERIODS; seen + horizonPeriods <= series.length; seen++) {
    let came = 0;
    for (let index = seen; index < seen + horizonPeriods; index++) came += series[index] ?? 0;
    const broad = broadProbability(came, (before / seen) * horizonPeriods);
    for (const [index, forecastAt] of forecasts.entries()) {
      const { spread } = forecastCandidates[index] ?? {};
      const own =
        tooLarge && spread === 'empirical' ? 0 : componentProbability(forecastAt(seen), horizonPeriods, came);
      const scored = Math.log((1 - BROAD_SHARE) * own + BROAD_SHARE * broad);
      logScores[index] = (logScores[index] ?? 0) + scored;
    }
    before += series[seen] ?? 0;
    origins++;
  }
  return { horizonPeriods, origins, logScores };
}

/** Half of it lies beyond the mean seen so far, and its tail falls as slowly as 1/k²: chances of 0, 1, 2, … add up to 1. */
function broadProbability(count: number, mean: number): number {
  const scale = mean + 1;
  return scale / ((count + scale) * (count + scale + 1));
}

function largestOf(series: readonly number[]): number {
  return series.reduce((largest, count) => Math.max(largest, count), 0);
}

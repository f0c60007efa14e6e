import { backtest, FEWEST_PERIODS } from './backtest.js';
import { sizeDispersions } from './count-dispersion.js';
import type { CountComponent, ForecastMethod } from './demand-model.js';
import { candidateForecasts, forecastCandidates, type Spread } from './forecast-candidates.js';
import { methodWeights } from './method-weights.js';
import { classifySeries, type SeriesClass } from './series-class.js';

/** Candidates with less are left out of a forecast: they would cost time and tell nothing. */
const LEAST_WEIGHT = 0.005;

export interface CountForecastOptions {
  /** Periods whose sum is to be foretold: methods are judged by it. At least 1. */
  horizonPeriods: number;
  /** What a period is supposed to need while the series is too short to tell; 0 when left out. */
  assumedMean?: number;
  /** Weights of the candidates before the series is looked at (`commonWeights` of many series); else what is supposed. */
  prior?: readonly number[];
}

/** How one method did in foretelling the sums that came later. */
export interface MethodScore {
  method: ForecastMethod;
  /** Weight of the newest period; null for the bootstrap. */
  alpha: number | null;
  spread: Spread;
  /** Mean logarithmic score over the origins, negated: 0 is clairvoyance, smaller is better; null without origins. */
  logScore: number | null;
  /** Its part in the forecast; those of all methods add up to 1. */
  weight: number;
}

export interface CountForecast {
  /** Their weights add up to 1. */
  components: CountComponent[];
  class: SeriesClass;
  adi: number | null;
  cv2: number | null;
  /** The most weighted first; empty while the level is assumed. */
  scores: MethodScore[];
  /** How many times the past was foretold from what came before it. */
  origins: number;
}

/**
 * Foretells how many uses the next periods have, from those of the periods before them, as a mixture of methods: each
 * weighs as much as its foretelling of the past makes it believed.
 *
 * @param series uses of each period, the oldest first: whole numbers, at least 0
 * @throws RangeError when a count or the horizon is not whole or is negative
 */
export function forecastCounts(series: readonly number[], options: CountForecastOptions): CountForecast {
  const { horizonPeriods, assumedMean = 0, prior } = options;
  checkCounts(series, horizonPeriods);
  const classified = classifySeries(series);
  if (series.length < FEWEST_PERIODS) {
    return { components: [assumedLevel(series, assumedMean)], ...classified, scores: [], origins: 0 };
  }

  const { origins, logScores } = backtest(series, horizonPeriods);
  const all = methodWeights({ origins, logScores, horizonPeriods }, prior);
  const kept = all.reduce((sum, weight) => sum + (weight < LEAST_WEIGHT ? 0 : weight), 0);
  const forecasts = candidateForecasts(series, horizonPeriods);
  const ranked = forecastCandidates
    .map(({ method, alpha, spread }, index) => {
      const own = all[index] ?? 0;
      const weight = own < LEAST_WEIGHT ? 0 : own / kept;
      const logScore = origins === 0 ? null : -(logScores[index] ?? 0) / origins;
      return { score: { method, alpha, spread, logScore, weight }, forecastAt: forecasts[index] };
    })
    .sort((one, other) => other.score.weight - one.score.weight);
  const components = ranked.flatMap(({ score: { weight }, forecastAt }) =>
    weight > 0 && forecastAt ? [{ ...forecastAt(series.length), weight }] : [],
  );
  return { components, ...classified, scores: ranked.map(({ score }) => score), origins };
}

function checkCounts(series: readonly number[], horizonPeriods: number): void {
  const wrong = series.findIndex((count) => !Number.isSafeInteger(count) || count < 0);
  if (wrong >= 0) {
    throw new RangeError(
      `Period ${wrong + 1} has ${series[wrong]} uses. Allowed are whole numbers from 0. Correct the series.`,
    );
  }
  if (!Number.isSafeInteger(horizonPeriods) || horizonPeriods < 1) {
    throw new RangeError(
      `A horizon of ${horizonPeriods} periods was given. Allowed are whole numbers from 1. Give another.`,
    );
  }
}

/** What was seen and what is assumed, the latter with the weight of the periods that are missing. */
function assumedLevel(series: readonly number[], assumedMean: number): CountComponent {
  const seen = series.reduce((sum, count) => sum + count, 0);
  const missing = FEWEST_PERIODS - series.length;
  return {
    method: 'level assumed',
    weight: 1,
    kind: 'negative binomial',
    mean: (seen + missing * assumedMean) / FEWEST_PERIODS,
    dispersion: sizeDispersions(series)[series.length] ?? 1,
  };
}

import { countDispersions } from './count-dispersion.js';
import { componentProbabilities } from './count-distribution.js';
import type { CountComponent, ForecastMethod } from './demand-model.js';
import { type ForecastCandidate, forecastCandidates, levelsOf, type Spread } from './forecast-candidates.js';
import { rankedProbabilityScore } from './ranked-probability-score.js';
import { classifySeries, type SeriesClass } from './series-class.js';

/** Fewer periods tell nothing of a method, so the level is assumed. */
export const FEWEST_PERIODS = 6;
/** Scores count as much as what is supposed of a method after so many origins. */
const ORIGINS_SUPPOSED = 10;
/** How fast the weight of a method falls with its score: by e for a twentieth more than the best. */
const SHARPNESS = 20;
/** Methods with less are left out: they would cost time and tell nothing. */
const LEAST_WEIGHT = 0.005;

export interface CountForecastOptions {
  /** Periods whose sum is to be foretold: methods are judged by it. At least 1. */
  horizonPeriods: number;
  /** What a period is supposed to need while the series is too short to tell; 0 when left out. */
  assumedMean?: number;
}

/** How one method did in foretelling the sums that came later. */
export interface MethodScore {
  method: ForecastMethod;
  /** Weight of the newest period; null for the bootstrap. */
  alpha: number | null;
  spread: Spread;
  /** Mean ranked probability score over the origins, in units of the count; smaller is better. */
  rankedProbabilityScore: number;
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
 * Foretells how many uses the next periods have, from those of the periods before them.
 *
 * Each method foretells the past again from what came before it (rolling origin); its ranked probability score of the sum
 * over the horizon, drawn towards what is supposed of it while there are few origins, makes its weight.
 *
 * @param series uses of each period, the oldest first: whole numbers, at least 0
 * @throws RangeError when a count or the horizon is not whole or is negative
 */
export function forecastCounts(series: readonly number[], options: CountForecastOptions): CountForecast {
  const { horizonPeriods, assumedMean = 0 } = options;
  checkCounts(series, horizonPeriods);
  const classified = classifySeries(series);
  if (series.length < FEWEST_PERIODS) {
    return { components: assumedLevel(series, assumedMean), ...classified, scores: [], origins: 0 };
  }

  const dispersions = countDispersions(series);
  const tracks = forecastCandidates.map((candidate) => ({
    candidate,
    componentAt: componentsOf(candidate, series, dispersions),
  }));
  const origins = originsOf(series.length, horizonPeriods);
  const scores = tracks.map(({ componentAt }) => meanScore(componentAt, series, origins, horizonPeriods));
  const weights = weightsOf(scores, origins.length);

  const ranked = tracks
    .map(({ candidate, componentAt }, index) => ({
      candidate,
      component: { ...componentAt(series.length), weight: weights[index] ?? 0 },
      score: scores[index] ?? 0,
    }))
    .sort((one, other) => other.component.weight - one.component.weight);
  return {
    components: ranked.map(({ component }) => component).filter(({ weight }) => weight > 0),
    ...classified,
    scores: ranked.map(({ candidate: { method, alpha, spread }, component: { weight }, score }) => ({
      method,
      alpha,
      spread,
      rankedProbabilityScore: score,
      weight,
    })),
    origins: origins.length,
  };
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
function assumedLevel(series: readonly number[], assumedMean: number): CountComponent[] {
  const seen = series.reduce((sum, count) => sum + count, 0);
  const missing = FEWEST_PERIODS - series.length;
  const mean = (seen + missing * assumedMean) / FEWEST_PERIODS;
  const dispersion = countDispersions(series)[series.length] ?? 1;
  return [{ method: 'level assumed', weight: 1, kind: 'negative binomial', mean, dispersion }];
}

/** What a method says of one period when the first so many are known. */
function componentsOf(
  candidate: ForecastCandidate,
  series: readonly number[],
  dispersions: Float64Array,
): (seen: number) => CountComponent {
  const { method, spread } = candidate;
  const levels = levelsOf(candidate, series);
  if (levels === null) {
    return (seen) => ({ method, weight: 1, kind: 'empirical', counts: series.slice(0, seen) });
  }
  return (seen) => ({
    method,
    weight: 1,
    kind: 'negative binomial',
    mean: levels[seen] ?? 0,
    dispersion: spread === 'Poisson' ? 1 : (dispersions[seen] ?? 1),
  });
}

/** How many periods were known each time the past is foretold. */
function originsOf(periods: number, horizonPeriods: number): number[] {
  const origins: number[] = [];
  for (let seen = FEWEST_PERIODS; seen + horizonPeriods <= periods; seen++) origins.push(seen);
  return origins;
}

function meanScore(
  componentAt: (seen: number) => CountComponent,
  series: readonly number[],
  origins: readonly number[],
  horizonPeriods: number,
): number {
  let sum = 0;
  for (const seen of origins) {
    let came = 0;
    for (let index = seen; index < seen + horizonPeriods; index++) came += series[index] ?? 0;
    sum += rankedProbabilityScore(componentProbabilities(componentAt(seen), horizonPeriods), came);
  }
  return origins.length === 0 ? 0 : sum / origins.length;
}

function weightsOf(scores: readonly number[], origins: number): number[] {
  const best = Math.min(...scores);
  const share = origins / (origins + ORIGINS_SUPPOSED);
  const excess = scores.map((score, index) => {
    const own = best > 0 ? score / best - 1 : score > 0 ? 1 : 0;
    return share * own + (1 - share) * (forecastCandidates[index]?.handicap ?? 0);
  });
  const least = Math.min(...excess);
  return shares(
    shares(excess.map((by) => Math.exp(-SHARPNESS * (by - least)))).map((weight) =>
      weight < LEAST_WEIGHT ? 0 : weight,
    ),
  );
}

function shares(weights: readonly number[]): number[] {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}

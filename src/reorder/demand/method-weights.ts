import type { Backtest } from './backtest.js';
import { forecastCandidates } from './forecast-candidates.js';

/** Rounds of learning what series have in common; it hardly changes after. */
const ROUNDS = 20;
/** What is supposed counts as much as so many series, and never less than so large a share of all. */
const SERIES_SUPPOSED = 5;
const SHARE_SUPPOSED = 0.1;

/** Weights of the candidates before a series was looked at; they add up to 1. */
export const supposedWeights: readonly number[] = shares(
  forecastCandidates.map(({ priorWeight }) => priorWeight),
);

/**
 * Weights of the candidates after their scores: in proportion to the prior weight times the chance given to what came.
 * Neighbouring origins share all but one period of their horizon, so that each counts as the share of it that is new.
 */
export function methodWeights(
  { logScores, horizonPeriods }: Backtest,
  prior: readonly number[] = supposedWeights,
): number[] {
  const logarithms = prior.map(
    (weight, index) => Math.log(weight) + (logScores[index] ?? 0) / horizonPeriods,
  );
  const largest = Math.max(...logarithms);
  return shares(logarithms.map((logarithm) => Math.exp(logarithm - largest)));
}

/**
 * What the series of one studio have in common: how likely each candidate is the right one for a series of it, by
 * expectation and maximisation over all of them (Dempster, Laird & Rubin 1977), drawn towards what is supposed.
 */
export function commonWeights(backtests: readonly Backtest[]): number[] {
  const telling = backtests.filter(({ origins }) => origins > 0);
  const supposed = SERIES_SUPPOSED + SHARE_SUPPOSED * telling.length;
  let common: readonly number[] = supposedWeights;
  for (let round = 0; round < ROUNDS; round++) {
    const sums = supposedWeights.map((weight) => weight * supposed);
    for (const one of telling) {
      for (const [index, weight] of methodWeights(one, common).entries()) {
        sums[index] = (sums[index] ?? 0) + weight;
      }
    }
    common = shares(sums);
  }
  return [...common];
}

function shares(weights: readonly number[]): number[] {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}

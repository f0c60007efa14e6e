import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';
import { type Backtest, backtest, FEWEST_PERIODS } from './backtest.js';
import { negativeBinomialProbabilities, quantileOf, sumQuantile } from './count-distribution.js';
import { forecastCounts } from './count-forecast.js';
import { crostonLevels } from './croston.js';
import { commonWeights } from './method-weights.js';
import type { SeriesClass } from './series-class.js';
import { simpleSmoothingLevels } from './simple-smoothing.js';
import { syntetosBoylanLevels } from './syntetos-boylan.js';
import { teunterSyntetosBabaiLevels } from './teunter-syntetos-babai.js';

/** Smoothing of the single methods; 0.1 is the textbooks' usual one. */
const ALPHA = 0.1;

export interface JudgeOptions {
  /** Periods at the end of each series whose sum is foretold from what comes before. */
  periods: number;
  /** The probability with which the forecast should be enough, above 0 and below 1. */
  level: number;
}

export interface JudgedForecast {
  name: string;
  /** Mean pinball loss by class of the series, and of all; smaller is better. */
  losses: Map<SeriesClass | 'all', number>;
  /** How often what came was not more than what was foretold. */
  enough: number;
}

export interface Judgement {
  /** Series by class. */
  series: Map<SeriesClass | 'all', number>;
  /** Too short to foretell anything of. */
  tooShort: number;
  /** The mixtures first, then each single method. */
  forecasts: JudgedForecast[];
}

type Levels = (series: readonly number[]) => ArrayLike<number>;

const singleLevels: Record<string, Levels> = {
  'simple smoothing': (series) => simpleSmoothingLevels(series, ALPHA),
  'Teunter-Syntetos-Babai': (series) => teunterSyntetosBabaiLevels(series, ALPHA, ALPHA),
  Croston: (series) => crostonLevels(series, ALPHA),
  'Syntetos-Boylan': (series) => syntetosBoylanLevels(series, ALPHA),
};
const singleSpreads = ['Poisson', 'negative binomial', 'normal'] as const;

export const MIXTURE_TOGETHER = 'mixture, series together';
export const MIXTURE_ALONE = 'mixture, each alone';

/**
 * Foretells the last periods of many series from what comes before them, by the mixture and by each single method, and
 * compares them by pinball loss (Koenker & Bassett 1978, Econometrica 46:33–50). Nothing of the last periods is used before.
 *
 * @param series whole numbers, at least 0, the oldest first
 */
export function judgeForecasts(series: readonly (readonly number[])[], options: JudgeOptions): Judgement {
  const { periods, level } = options;
  const told = series.filter(({ length }) => length >= FEWEST_PERIODS + periods);
  const pasts = told.map((each) => each.slice(0, -periods));
  const prior = commonWeights(pasts.map((past): Backtest => backtest(past, periods)));
  const counts = new Map<SeriesClass | 'all', number>();
  const sums = new Map<string, { losses: Map<SeriesClass | 'all', number>; enough: number }>();
  for (const [index, past] of pasts.entries()) {
    const came = (told[index] ?? []).slice(-periods).reduce((sum, count) => sum + count, 0);
    const alone = forecastCounts(past, { horizonPeriods: periods });
    const together = forecastCounts(past, { horizonPeriods: periods, prior });
    const foretold: [string, number][] = [
      [MIXTURE_TOGETHER, sumQuantile(together.components, periods, level)],
      [MIXTURE_ALONE, sumQuantile(alone.components, periods, level)],
      ...singleForecasts(past, options),
    ];
    const groups = ['all', alone.class] as const;
    for (const group of groups) counts.set(group, (counts.get(group) ?? 0) + 1);
    for (const [name, quantity] of foretold) {
      const known = sums.get(name) ?? { losses: new Map<SeriesClass | 'all', number>(), enough: 0 };
      const loss = pinballLoss(quantity, came, level);
      for (const group of groups) known.losses.set(group, (known.losses.get(group) ?? 0) + loss);
      if (came <= quantity) known.enough++;
      sums.set(name, known);
    }
  }
  return {
    series: counts,
    tooShort: series.length - told.length,
    forecasts: [...sums].map(([name, { losses, enough }]) => ({
      name,
      losses: new Map([...losses].map(([group, loss]) => [group, loss / (counts.get(group) ?? 1)])),
      enough: enough / told.length,
    })),
  };
}

/** What it costs that a quantity was foretold and another came: dear by `level` a unit short, cheap by the rest a unit over. */
export function pinballLoss(foretold: number, came: number, level: number): number {
  return came >= foretold ? level * (came - foretold) : (1 - level) * (foretold - came);
}

function singleForecasts(past: readonly number[], options: JudgeOptions): [string, number][] {
  const { periods, level } = options;
  const drawn = sumQuantile(
    [{ method: 'bootstrap', weight: 1, kind: 'empirical', counts: past }],
    periods,
    level,
  );
  return [...smoothedForecasts(past, options), ['bootstrap', drawn]];
}

function smoothedForecasts(past: readonly number[], { periods, level }: JudgeOptions): [string, number][] {
  const { mean, variance } = momentsOf(past);
  const dispersion = mean > 0 ? Math.max(1, variance / mean) : 1;
  return Object.entries(singleLevels).flatMap(([method, levelsOf]) => {
    const levels = levelsOf(past);
    const sum = periods * (levels[past.length] ?? 0);
    let squares = 0;
    for (let seen = 1; seen < past.length; seen++) squares += ((past[seen] ?? 0) - (levels[seen] ?? 0)) ** 2;
    const deviation = Math.sqrt((periods * squares) / Math.max(1, past.length - 1));
    return singleSpreads.map((spread): [string, number] => {
      const name = `${method}, ${spread}`;
      if (spread === 'normal') return [name, Math.max(0, sum + deviation * normalQuantileOf(level, 0, 1))];
      return [name, countQuantile(sum, spread === 'Poisson' ? 1 : dispersion, level)];
    });
  });
}

function countQuantile(mean: number, dispersion: number, level: number): number {
  let sum = 0;
  const cumulative = negativeBinomialProbabilities(mean, dispersion).map((chance) => {
    sum += chance;
    return sum;
  });
  return quantileOf(cumulative, level);
}

function momentsOf(series: readonly number[]): { mean: number; variance: number } {
  const mean = series.reduce((sum, count) => sum + count, 0) / series.length;
  const squares = series.reduce((sum, count) => sum + (count - mean) ** 2, 0);
  return { mean, variance: squares / Math.max(1, series.length - 1) };
}

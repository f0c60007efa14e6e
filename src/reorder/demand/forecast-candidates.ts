import { crostonLevels } from './croston.js';
import type { ForecastMethod } from './demand-model.js';
import { simpleSmoothingLevels } from './simple-smoothing.js';
import { syntetosBoylanLevels } from './syntetos-boylan.js';
import { teunterSyntetosBabaiLevels } from './teunter-syntetos-babai.js';

export type Spread = 'Poisson' | 'negative binomial' | 'empirical';

/** A way to foretell counts that takes part in the comparison. */
export interface ForecastCandidate {
  method: ForecastMethod;
  /** Weight of the newest period; null for the bootstrap. */
  alpha: number | null;
  spread: Spread;
  /**
   * How much worse than the best it is supposed to score, as a share, until its own scores tell. Croston and
   * Syntetos-Boylan do not fall when demand ends, and Poisson knows no bursts: they start behind.
   */
  handicap: number;
}

export const forecastCandidates: readonly ForecastCandidate[] = [
  ...[0.05, 0.1, 0.2].flatMap((alpha): ForecastCandidate[] => [
    { method: 'simple smoothing', alpha, spread: 'negative binomial', handicap: 0 },
    { method: 'Teunter-Syntetos-Babai', alpha, spread: 'negative binomial', handicap: 0 },
  ]),
  { method: 'simple smoothing', alpha: 0.1, spread: 'Poisson', handicap: 0.2 },
  { method: 'Teunter-Syntetos-Babai', alpha: 0.1, spread: 'Poisson', handicap: 0.2 },
  { method: 'bootstrap', alpha: null, spread: 'empirical', handicap: 0.15 },
  { method: 'Croston', alpha: 0.1, spread: 'negative binomial', handicap: 0.2 },
  { method: 'Syntetos-Boylan', alpha: 0.1, spread: 'negative binomial', handicap: 0.2 },
  { method: 'Croston', alpha: 0.1, spread: 'Poisson', handicap: 0.35 },
  { method: 'Syntetos-Boylan', alpha: 0.1, spread: 'Poisson', handicap: 0.35 },
];

/** Means of a period as one candidate sees them: entry t knows the first t periods. The bootstrap has none. */
export function levelsOf(
  { method, alpha }: ForecastCandidate,
  series: ArrayLike<number>,
): Float64Array | null {
  if (alpha === null) return null;
  if (method === 'Croston') return crostonLevels(series, alpha);
  if (method === 'Syntetos-Boylan') return syntetosBoylanLevels(series, alpha);
  if (method === 'Teunter-Syntetos-Babai') return teunterSyntetosBabaiLevels(series, alpha, alpha);
  return simpleSmoothingLevels(series, alpha);
}

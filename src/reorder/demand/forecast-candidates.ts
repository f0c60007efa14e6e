import { recentDispersions, sizeDispersions } from './count-dispersion.js';
import { crostonLevels } from './croston.js';
import type { CountComponent, ForecastMethod } from './demand-model.js';
import { simpleSmoothingLevels } from './simple-smoothing.js';
import { syntetosBoylanLevels } from './syntetos-boylan.js';
import { teunterSyntetosBabaiLevels } from './teunter-syntetos-babai.js';

/**
 * How counts scatter about their level: as Poisson's do, as a negative binomial does by the errors of late or by all
 * sizes seen, or as they were seen themselves.
 */
export type Spread = 'Poisson' | 'recent errors' | 'all sizes' | 'empirical';

/** A way to foretell counts that takes part in the comparison. */
export interface ForecastCandidate {
  method: ForecastMethod;
  /** Weight of the newest period; null for the bootstrap. */
  alpha: number | null;
  spread: Spread;
  /** Its weight before any score, relative to the others. */
  priorWeight: number;
}

const decaying = ['simple smoothing', 'Teunter-Syntetos-Babai'] as const;
const staying = ['Croston', 'Syntetos-Boylan'] as const;

/**
 * Prior weights: of methods that do not fall when demand ends a good third of the others', and of Poisson's spread, which
 * knows no bursts, three quarters. The bootstrap stands alone for its kind where smoothing has sixteen variants: six times
 * theirs, else it would hardly be heard. From the comparison on made series that DEVELOPERS.md tells of.
 */
export const forecastCandidates: readonly ForecastCandidate[] = [
  ...decaying.flatMap((method) => [
    ...[0.02, 0.05, 0.2].flatMap((alpha) => [
      candidate(method, alpha, 'recent errors', 1),
      candidate(method, alpha, 'all sizes', 1),
    ]),
    ...[0.05, 0.2].map((alpha) => candidate(method, alpha, 'Poisson', 0.75)),
  ]),
  ...staying.flatMap((method) =>
    [0.1, 0.2].flatMap((alpha) => [
      candidate(method, alpha, 'recent errors', 0.37),
      candidate(method, alpha, 'Poisson', 0.37),
    ]),
  ),
  candidate('bootstrap', null, 'empirical', 6),
];

function candidate(
  method: ForecastMethod,
  alpha: number | null,
  spread: Spread,
  priorWeight: number,
): ForecastCandidate {
  return { method, alpha, spread, priorWeight };
}

/**
 * What each candidate says of a period when only the first so many periods are known; weights are left at 1.
 *
 * That a smoothed level is itself uncertain lasts through the whole horizon: with weights w of what was seen, the
 * variance of a sum of h periods is 1 + h Σw² times that about a known level, and so is the spread (not Poisson's, which
 * is what a Poisson forecast says it is).
 */
export function candidateForecasts(
  series: readonly number[],
  horizonPeriods: number,
): ((seen: number) => CountComponent)[] {
  const dispersions = { 'recent errors': recentDispersions(series), 'all sizes': sizeDispersions(series) };
  return forecastCandidates.map(({ method, alpha, spread }) => {
    if (alpha === null || spread === 'empirical') {
      return (seen) => ({ method, weight: 1, kind: 'empirical', counts: series.slice(0, seen) });
    }
    const levels = levelsOf(method, alpha, series);
    const dispersionAt = (seen: number) =>
      spread === 'Poisson'
        ? 1
        : (dispersions[spread][seen] ?? 1) * (1 + horizonPeriods * squaredWeights(alpha, seen));
    return (seen) => ({
      method,
      weight: 1,
      kind: 'negative binomial',
      mean: levels[seen] ?? 0,
      dispersion: dispersionAt(seen),
    });
  });
}

/** Sum of the squares of weights that fall by 1 − alpha a period and add up to 1. */
function squaredWeights(alpha: number, periods: number): number {
  const kept = 1 - alpha;
  const sum = (1 - kept ** periods) / alpha;
  const squares = (1 - kept ** (2 * periods)) / (1 - kept ** 2);
  return squares / sum ** 2;
}

function levelsOf(method: ForecastMethod, alpha: number, series: readonly number[]): Float64Array {
  if (method === 'Croston') return crostonLevels(series, alpha);
  if (method === 'Syntetos-Boylan') return syntetosBoylanLevels(series, alpha);
  // Sizes are smoothed as slowly as sizes are seen; alpha is the probability's.
  if (method === 'Teunter-Syntetos-Babai') return teunterSyntetosBabaiLevels(series, 0.1, alpha);
  return simpleSmoothingLevels(series, alpha);
}

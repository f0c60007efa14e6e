import negativeBinomialProbability from '@stdlib/stats-base-dists-negative-binomial-pmf';
import negativeBinomialQuantile from '@stdlib/stats-base-dists-negative-binomial-quantile';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  componentProbability,
  negativeBinomialProbabilities,
  sumDistribution,
  sumQuantile,
} from './count-distribution.js';
import type { CountComponent } from './demand-model.js';

const component = (mean: number, dispersion = 1, weight = 1): CountComponent => ({
  method: 'simple smoothing',
  weight,
  kind: 'negative binomial',
  mean,
  dispersion,
});
const means = fc.double({ min: 0.001, max: 3_000, noNaN: true });
const dispersions = fc.double({ min: 1.001, max: 40, noNaN: true });

describe('the distribution of a sum of counts', () => {
  it('has the Poisson quantiles of R 4.2.2', () => {
    const levels = [0.5, 0.9, 0.95, 0.98, 0.99, 0.999];
    const quantiles = (mean: number) => levels.map((level) => sumQuantile([component(mean)], 1, level));
    expect(quantiles(0.3)).toEqual([0, 1, 1, 2, 2, 3]);
    expect(quantiles(2.5)).toEqual([2, 5, 5, 6, 7, 9]);
    expect(quantiles(6)).toEqual([6, 9, 10, 12, 12, 15]);
  });

  it('has the negative binomial chances and quantiles of @stdlib, itself checked against R', () => {
    fc.assert(
      fc.property(means, dispersions, fc.constantFrom(0.05, 0.5, 0.95, 0.999), (mean, dispersion, level) => {
        const chances = negativeBinomialProbabilities(mean, dispersion);
        const at = Math.round(mean);
        const r = mean / (dispersion - 1);
        const wanted = negativeBinomialProbability(at, r, 1 / dispersion);
        expect(Math.abs((chances[at] ?? 0) / wanted - 1)).toBeLessThan(1e-7);
        expect(Math.abs(componentProbability(component(mean, dispersion), 1, at) / wanted - 1)).toBeLessThan(
          1e-7,
        );
        const quantile = sumQuantile([component(mean, dispersion)], 1, level);
        expect(quantile - negativeBinomialQuantile(level, r, 1 / dispersion)).toBe(0);
      }),
      { numRuns: 60 },
    );
  });

  it('rises to 1, and its quantiles rise with the level and the periods', () => {
    const weighed = fc.tuple(means, dispersions, fc.double({ min: 0, max: 1, noNaN: true }));
    fc.assert(
      fc.property(weighed, fc.integer({ min: 1, max: 5 }), ([mean, dispersion, weight], periods) => {
        const components: CountComponent[] = [
          component(mean / 10, dispersion, weight),
          { method: 'bootstrap', weight: 1 - weight, kind: 'empirical', counts: [0, 0, 3] },
        ];
        const cumulative = sumDistribution(components, periods);
        expect(cumulative.every((value, at) => value >= (cumulative[at - 1] ?? 0) && value <= 1)).toBe(true);
        expect(cumulative.at(-1)).toBe(1);
        const quantiles = [0, 0.2, 0.5, 0.9, 0.99, 1].map((level) => sumQuantile(components, periods, level));
        expect(quantiles).toEqual([...quantiles].sort((one, other) => one - other));
        expect(sumQuantile(components, periods + 1, 0.9)).toBeGreaterThanOrEqual(quantiles[3] ?? 0);
      }),
      { numRuns: 60 },
    );
  });

  it('is 0 for sure where nothing is expected', () => {
    expect([...sumDistribution([component(0)], 3)]).toEqual([1]);
    expect([...sumDistribution([], 3)]).toEqual([1]);
    expect(componentProbability(component(0), 3, 0)).toBe(1);
    expect(componentProbability(component(0), 3, 2)).toBe(0);
  });
});

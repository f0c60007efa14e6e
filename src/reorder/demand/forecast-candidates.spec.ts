import { describe, expect, it } from 'vitest';
import { seriesA } from '../../../tests/support/reference-series.js';
import { crostonLevels } from './croston.js';
import { candidateForecasts, forecastCandidates } from './forecast-candidates.js';

const at = (method: string, spread: string, alpha: number | null) =>
  forecastCandidates.findIndex(
    (each) => each.method === method && each.spread === spread && each.alpha === alpha,
  );

describe('the candidates of a forecast', () => {
  it('are every method, with Poisson and wider spreads', () => {
    expect([...new Set(forecastCandidates.map(({ method }) => method))].sort()).toEqual([
      'Croston',
      'Syntetos-Boylan',
      'Teunter-Syntetos-Babai',
      'bootstrap',
      'simple smoothing',
    ]);
  });

  it('say what their method says of the periods seen', () => {
    const forecasts = candidateForecasts(seriesA, 3);
    const croston = forecasts[at('Croston', 'Poisson', 0.1)]?.(20);
    expect(croston).toMatchObject({ mean: crostonLevels(seriesA, 0.1)[20], dispersion: 1 });
    expect(forecasts[at('bootstrap', 'empirical', null)]?.(6)).toMatchObject({ counts: seriesA.slice(0, 6) });
  });

  it('are wider the faster their level moves and the longer the horizon is', () => {
    const spread = (alpha: number, horizon: number) => {
      const component = candidateForecasts(seriesA, horizon)[at('simple smoothing', 'all sizes', alpha)]?.(
        36,
      );
      return component?.kind === 'negative binomial' ? component.dispersion : 0;
    };
    expect(spread(0.2, 3)).toBeGreaterThan(spread(0.05, 3));
    expect(spread(0.2, 6)).toBeGreaterThan(spread(0.2, 3));
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seriesA } from '../../../tests/support/reference-series.js';
import { sumQuantile } from './count-distribution.js';
import { forecastCounts } from './count-forecast.js';

const horizonPeriods = 3;

describe('the forecast of counts', () => {
  it('is a mixture of methods with the class of the series and each method scored', () => {
    const forecast = forecastCounts(seriesA, { horizonPeriods });
    expect(forecast.class).toBe('lumpy');
    expect(forecast.origins).toBe(28);
    expect(new Set(forecast.scores.map(({ method }) => method)).size).toBe(5);
    expect(forecast.scores.every(({ logScore }) => logScore !== null && logScore > 0)).toBe(true);
    // The largest sum of three neighbouring periods is 12, the usual one 0 to 3.
    const enough = sumQuantile(forecast.components, horizonPeriods, 0.95);
    expect(enough).toBeGreaterThanOrEqual(5);
    expect(enough).toBeLessThanOrEqual(12);
  });

  it('expects nothing where nothing was ever needed', () => {
    const { components, scores } = forecastCounts(new Array<number>(30).fill(0), { horizonPeriods });
    expect(sumQuantile(components, 3, 0.99)).toBe(0);
    expect(scores.every(({ weight }) => Number.isFinite(weight))).toBe(true);
  });

  it('expects little after one use ever, and nearly nothing once that is long ago', () => {
    const late = [...new Array<number>(29).fill(0), 1];
    const early = [1, ...new Array<number>(29).fill(0)];
    const chanceOfSome = (series: number[]) => {
      const { components } = forecastCounts(series, { horizonPeriods });
      return components.reduce(
        (sum, component) =>
          sum + (component.kind === 'negative binomial' ? component.weight * component.mean : 0),
        0,
      );
    };
    expect(chanceOfSome(late)).toBeGreaterThan(chanceOfSome(early));
    expect(chanceOfSome(early)).toBeLessThan(0.05);
  });

  it('assumes a level while the series is too short, less so the more was seen', () => {
    const level = (series: number[]) => forecastCounts(series, { horizonPeriods, assumedMean: 2 });
    expect(level([]).components).toEqual([
      { method: 'level assumed', weight: 1, kind: 'negative binomial', mean: 2, dispersion: 1.5 },
    ]);
    expect(level([]).scores).toEqual([]);
    expect(level([0, 0, 0]).components[0]).toMatchObject({ method: 'level assumed', mean: 1 });
    expect(forecastCounts([], { horizonPeriods }).components[0]).toMatchObject({ mean: 0 });
  });

  it('never makes anything but weights that add up to 1 and counts', () => {
    const counts = fc.array(fc.oneof(fc.constant(0), fc.nat(3), fc.nat(2_000)), { maxLength: 70 });
    fc.assert(
      fc.property(counts, fc.integer({ min: 1, max: 8 }), (series, periods) => {
        const { components, scores } = forecastCounts(series, { horizonPeriods: periods });
        expect(components.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
        for (const component of components) {
          if (component.kind === 'empirical') continue;
          expect(component.mean >= 0 && Number.isFinite(component.mean)).toBe(true);
          expect(component.dispersion >= 1 && Number.isFinite(component.dispersion)).toBe(true);
        }
        expect(scores.every(({ logScore }) => logScore === null || Number.isFinite(logScore))).toBe(true);
        expect(Number.isInteger(sumQuantile(components, periods, 0.95))).toBe(true);
      }),
      { numRuns: 25 },
    );
  });

  it('refuses what is no count and no horizon', () => {
    expect(() => forecastCounts([1, -1], { horizonPeriods })).toThrow('Period 2 has -1 uses');
    expect(() => forecastCounts([Number.NaN], { horizonPeriods })).toThrow('Period 1 has NaN uses');
    expect(() => forecastCounts([1.5], { horizonPeriods })).toThrow('whole numbers from 0');
    expect(() => forecastCounts([1], { horizonPeriods: 0 })).toThrow('A horizon of 0 periods');
  });
});

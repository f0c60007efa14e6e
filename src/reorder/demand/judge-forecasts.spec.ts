import { describe, expect, it } from 'vitest';
import { madeSeries, uniform } from '../../../tests/support/made-series.js';
import { judgeForecasts, MIXTURE_ALONE, MIXTURE_TOGETHER, pinballLoss } from './judge-forecasts.js';

function made(seed: number, each: number): number[][] {
  const random = uniform(seed);
  return Object.values(madeSeries).flatMap((make) =>
    Array.from({ length: each }, () => make(random, 27 + Math.floor(36 * random()))),
  );
}

describe('forecasts judged by what came', () => {
  it('are as good or better as a mixture than by any single method, on series made in ten ways', () => {
    const { forecasts, series } = judgeForecasts(made(20260726, 40), { periods: 3, level: 0.95 });
    expect(series.get('all')).toBe(400);
    const lossOf = (name: string) => forecasts.find((each) => each.name === name)?.losses.get('all') ?? 0;
    const singles = forecasts.filter(({ name }) => !name.startsWith('mixture'));
    expect(singles).toHaveLength(13);
    expect(singles.map(({ name }) => name)).toContain('bootstrap');
    const best = Math.min(...singles.map(({ name }) => lossOf(name)));
    // Over 4,000 such series it is 4 % better than the best single one; of 400, chance moves that by up to 5 %.
    expect(lossOf(MIXTURE_ALONE)).toBeLessThanOrEqual(1.02 * best);
    expect(lossOf(MIXTURE_TOGETHER)).toBeLessThanOrEqual(1.02 * best);
    const losses = singles.map(({ name }) => lossOf(name));
    expect(lossOf(MIXTURE_TOGETHER)).toBeLessThan(
      losses.reduce((sum, loss) => sum + loss, 0) / losses.length,
    );
    const enough = forecasts.find(({ name }) => name === MIXTURE_TOGETHER)?.enough ?? 0;
    expect(enough).toBeGreaterThan(0.91);
    expect(enough).toBeLessThan(0.99);
  });

  it('use nothing of the last periods', () => {
    const series = made(7, 1);
    const changed = series.map((each) => [...each.slice(0, -3), 500, 0, 0]);
    const enough = (many: number[][]) => judgeForecasts(many, { periods: 3, level: 0.95 }).forecasts;
    // Every forecast is as far from 500 as it is from what came: they are the same ones.
    for (const [index, { losses }] of enough(changed).entries()) {
      const before = enough(series)[index];
      expect(losses.get('all')).toBeGreaterThan(before?.losses.get('all') ?? 0);
      expect([...losses.keys()].sort()).toEqual([...(before?.losses.keys() ?? [])].sort());
    }
  });

  it('cost a shortage as the level says', () => {
    expect(pinballLoss(3, 5, 0.95)).toBeCloseTo(1.9, 12);
    expect(pinballLoss(5, 3, 0.95)).toBeCloseTo(0.1, 12);
  });

  it('leave out series that are too short, and say how many', () => {
    const judged = judgeForecasts([[1, 2, 3], []], { periods: 3, level: 0.95 });
    expect(judged).toMatchObject({ tooShort: 2, forecasts: [] });
  });
});

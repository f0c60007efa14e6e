import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backtest } from './backtest.js';
import { forecastCandidates } from './forecast-candidates.js';
import { commonWeights, methodWeights, supposedWeights } from './method-weights.js';

const sum = (weights: readonly number[]) => weights.reduce((total, weight) => total + weight, 0);
const counts = fc.array(fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, fc.nat(40)), { maxLength: 60 });

describe('the weights of forecasting methods', () => {
  it('are what is supposed while nothing was foretold', () => {
    const untold = backtest([1, 0, 2], 3);
    expect(untold.origins).toBe(0);
    for (const [index, weight] of methodWeights(untold).entries()) {
      expect(weight).toBeCloseTo(supposedWeights[index] ?? 0, 12);
    }
    expect(commonWeights([untold])).toHaveLength(forecastCandidates.length);
  });

  it('add up to 1 and are numbers whatever is foretold', () => {
    fc.assert(
      fc.property(fc.array(counts, { maxLength: 4 }), fc.integer({ min: 1, max: 6 }), (many, periods) => {
        const backtests = many.map((series) => backtest(series, periods));
        const common = commonWeights(backtests);
        for (const weights of [common, ...backtests.map((each) => methodWeights(each, common))]) {
          expect(sum(weights)).toBeCloseTo(1, 9);
          expect(weights.every((weight) => weight >= 0)).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('leave methods that do not fall when demand has ended', () => {
    const ended = [...new Array<number>(30).fill(3), ...new Array<number>(30).fill(0)];
    const weights = methodWeights(backtest(ended, 3));
    const staying = forecastCandidates.flatMap(({ method }, index) =>
      method === 'Croston' || method === 'Syntetos-Boylan' ? [weights[index] ?? 0] : [],
    );
    expect(sum(staying)).toBeLessThan(0.01);
  });

  it('lean to what suits the other series of a studio', () => {
    const regular = Array.from({ length: 20 }, (_, shift) =>
      Array.from({ length: 48 }, (_, period) => ((period + shift) % 2 === 0 ? 2 : 0)),
    );
    const common = commonWeights(regular.map((series) => backtest(series, 2)));
    const poisson = forecastCandidates.map(({ spread }) => spread === 'Poisson' || spread === 'empirical');
    const share = (weights: readonly number[]) => sum(weights.filter((_, index) => poisson[index]));
    expect(share(common)).toBeGreaterThan(share(supposedWeights));
  });
});

import negativeBinomialProbability from '@stdlib/stats-base-dists-negative-binomial-pmf';
import poissonProbability from '@stdlib/stats-base-dists-poisson-pmf';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CountChances, negativeBinomialChances, PeriodCounts, sampleChances } from './period-counts.js';
import { RandomNumbers } from './random-numbers.js';

function momentsOf({ from, chances }: CountChances) {
  let mean = 0;
  let square = 0;
  let sum = 0;
  chances.forEach((chance, index) => {
    sum += chance;
    mean += chance * (from + index);
    square += chance * (from + index) ** 2;
  });
  return { sum, mean, variance: square - mean * mean };
}

describe('chances of counts', () => {
  it('are those of the library, for Poisson and negative binomial', () => {
    for (const mean of [0.01, 0.3, 2.5, 40]) {
      for (const dispersion of [1, 1.2, 3, 20]) {
        const { from, chances } = negativeBinomialChances(mean, dispersion);
        chances.forEach((chance, index) => {
          const probability =
            dispersion === 1
              ? poissonProbability(from + index, mean)
              : negativeBinomialProbability(from + index, mean / (dispersion - 1), 1 / dispersion);
          expect(Math.abs(chance - probability)).toBeLessThan(1e-12);
        });
      }
    }
  });

  it('add up to 1 and have the mean and the variance asked for, also where a first term would vanish', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5_000, noNaN: true }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        (mean, dispersion) => {
          const { sum, ...moments } = momentsOf(negativeBinomialChances(mean, dispersion));
          expect(sum).toBeCloseTo(1, 10);
          expect(moments.mean).toBeCloseTo(mean, 6);
          expect(Math.abs(moments.variance - mean * dispersion)).toBeLessThan(
            1e-6 * (1 + mean * (mean + dispersion)),
          );
        },
      ),
    );
  });

  it('of a sample are the shares of its counts', () => {
    expect(sampleChances([3, 1, 1, 1])).toEqual({ from: 1, chances: Float64Array.of(0.75, 0, 0.25) });
    expect(() => sampleChances([])).toThrow('at least one is needed');
    expect(() => sampleChances([1.5])).toThrow('A count is 1.5');
  });

  it('are refused for what no count has', () => {
    expect(() => negativeBinomialChances(-1, 1)).toThrow('The mean of a count is -1');
    expect(() => negativeBinomialChances(1, 0.5)).toThrow('The dispersion of a count is 0.5: 1 to');
    expect(() => negativeBinomialChances(Number.NaN, 1)).toThrow('The mean of a count is NaN');
  });
});

describe('counts of periods', () => {
  it.each([
    ['seldom', negativeBinomialChances(0.05, 1)],
    ['seldom and in bursts', negativeBinomialChances(0.2, 4)],
    ['often', negativeBinomialChances(3, 1.5)],
    ['never none', sampleChances([2, 2, 5])],
    ['always the same', sampleChances([1])],
    ['mostly none', sampleChances([0, 0, 0, 7])],
  ])('come as often as their chances say: %s', (_, chances) => {
    const random = new RandomNumbers();
    random.start(20_261_126, 0, 0);
    const counts = new PeriodCounts(chances);
    const periods = 200_000;
    const seen = new Map<number, number>();
    for (let period = counts.emptyPeriods(random); period < periods; period++) {
      const uses = counts.uses(random);
      seen.set(uses, (seen.get(uses) ?? 0) + 1);
      period += counts.emptyPeriods(random);
    }
    const drawn = [...seen.values()].reduce((sum, count) => sum + count, 0);
    seen.set(0, (seen.get(0) ?? 0) + periods - drawn);
    chances.chances.forEach((chance, index) => {
      const count = seen.get(chances.from + index) ?? 0;
      const standardError = Math.sqrt(periods * chance * (1 - chance));
      expect(Math.abs(count - periods * chance)).toBeLessThanOrEqual(4 * standardError + 4);
    });
  });

  it('never come when all periods are empty', () => {
    const random = new RandomNumbers();
    random.start(1, 0, 0);
    const counts = new PeriodCounts(negativeBinomialChances(0, 1));
    expect(counts.emptyPeriods(random)).toBe(Infinity);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceOfSum, sumOfDraws } from './bootstrap.js';

describe('the bootstrap', () => {
  it('adds up two dice', () => {
    const two = sumOfDraws([1, 2, 3, 4, 5, 6], 2);
    expect(Array.from(two.slice(2), (chance) => Math.round(chance * 36))).toEqual([
      1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1,
    ]);
  });

  it('is nothing for sure without draws or counts', () => {
    expect([...sumOfDraws([3, 4], 0)]).toEqual([1]);
    expect([...sumOfDraws([], 3)]).toEqual([1]);
  });

  it('adds up to 1 and to draws times the mean, and tells one sum as it tells all', () => {
    const counts = fc.array(fc.nat(6), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(counts, fc.nat(6), fc.nat(40), (seen, draws, asked) => {
        const sums = sumOfDraws(seen, draws);
        const mean = seen.reduce((sum, count) => sum + count, 0) / seen.length;
        expect(sums.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 10);
        expect(sums.reduce((sum, chance, count) => sum + count * chance, 0)).toBeCloseTo(draws * mean, 9);
        expect(chanceOfSum(seen, draws, asked)).toBeCloseTo(sums[asked] ?? 0, 12);
      }),
    );
  });
});

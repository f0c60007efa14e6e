import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simpleSmoothingLevels } from './simple-smoothing.js';

describe('simple smoothing', () => {
  it('starts with the first period and weighs the newest most', () => {
    const levels = simpleSmoothingLevels([4, 0], 0.5);
    expect([...levels]).toEqual([0, 4, 4 / 3]);
  });

  it('follows the recursion of the textbooks once its start is forgotten', () => {
    const series = Array.from({ length: 400 }, (_, period) => (period * 7) % 5);
    let level = 0;
    for (const count of series) level += 0.1 * (count - level);
    expect(simpleSmoothingLevels(series, 0.1).at(-1)).toBeCloseTo(level, 10);
  });

  it('lies between the least and the most that was seen', () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(1000), { minLength: 1 }),
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        (series, alpha) => {
          const level = simpleSmoothingLevels(series, alpha).at(-1) ?? Number.NaN;
          expect(level).toBeGreaterThanOrEqual(Math.min(...series) - 1e-9);
          expect(level).toBeLessThanOrEqual(Math.max(...series) + 1e-9);
        },
      ),
    );
  });
});

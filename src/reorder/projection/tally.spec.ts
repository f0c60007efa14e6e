import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Tally } from './tally.js';

describe('a tally', () => {
  it('has the mean and its standard error of what was added', () => {
    const tally = new Tally(2);
    for (const figure of [2, 4, 4, 4, 5, 5, 7, 9]) tally.add(Float64Array.of(figure, 1_000_000_007));
    // The deviation of the sample is the root of 32/7.
    expect(tally.of(0).mean).toBe(5);
    expect(tally.of(0).standardError).toBeCloseTo(Math.sqrt(32 / 7 / 8), 12);
    expect(tally.of(1)).toEqual({ mean: 1_000_000_007, standardError: 0 });
  });

  it('finds a small difference between large figures', () => {
    const tally = new Tally(1);
    for (const figure of [1e12, 1e12 + 1, 1e12 + 2]) tally.add(Float64Array.of(figure));
    expect(tally.of(0)).toEqual({ mean: 1e12 + 1, standardError: Math.sqrt(1 / 3) });
  });

  it('has no error of one path and no mean of none', () => {
    const tally = new Tally(1);
    expect(() => tally.of(0)).toThrow('No path was counted');
    tally.add(Float64Array.of(3));
    expect(tally.of(0)).toEqual({ mean: 3, standardError: 0 });
  });

  it('forgets what was before it is started anew', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer(), { minLength: 1 }),
        fc.array(fc.integer(), { minLength: 1 }),
        (one, other) => {
          const used = new Tally(1);
          for (const figure of one) used.add(Float64Array.of(figure));
          used.start();
          const fresh = new Tally(1);
          for (const figure of other) for (const tally of [used, fresh]) tally.add(Float64Array.of(figure));
          expect(used.of(0)).toEqual(fresh.of(0));
        },
      ),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recentDispersions, sizeDispersions } from './count-dispersion.js';

describe('the spread of counts', () => {
  it('is what is assumed before anything was seen, and Poisson for what never varies', () => {
    expect(recentDispersions([])[0]).toBe(1.5);
    expect(sizeDispersions([])[0]).toBe(1.5);
    const steady = new Array<number>(60).fill(5);
    expect(recentDispersions(steady).at(-1)).toBe(1);
    expect(sizeDispersions(steady).at(-1)).toBe(1);
  });

  it('comes to the sample variance over the mean when much was seen', () => {
    const series = Array.from({ length: 600 }, (_, period) => (period % 3 === 0 ? 30 : 0));
    // Mean 10, variance 200.
    expect(sizeDispersions(series).at(-1)).toBeCloseTo(20, 0);
    expect(recentDispersions(series).at(-1)).toBeGreaterThan(15);
  });

  it('is a number of at least 1, and knows nothing of later periods', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(10_000), { maxLength: 60 }), fc.nat(60), (series, at) => {
        const seen = Math.min(at, series.length);
        for (const dispersions of [recentDispersions, sizeDispersions]) {
          const all = dispersions(series);
          expect(all.every((value) => value >= 1 && Number.isFinite(value))).toBe(true);
          expect(all[seen]).toBe(dispersions(series.slice(0, seen))[seen]);
        }
      }),
    );
  });
});

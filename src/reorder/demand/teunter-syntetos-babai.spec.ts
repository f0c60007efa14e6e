import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seriesA, seriesB } from '../../../tests/support/reference-series.js';
import { teunterSyntetosBabaiLevels } from './teunter-syntetos-babai.js';

describe('the forecast of Teunter, Syntetos and Babai', () => {
  it('is that of R 4.2.2 with alpha and beta 0.1', () => {
    expect(teunterSyntetosBabaiLevels(seriesA, 0.1, 0.1).at(-1)).toBeCloseTo(0.8251005032, 10);
    expect(teunterSyntetosBabaiLevels(seriesB, 0.1, 0.1).at(-1)).toBeCloseTo(1.3891038614, 10);
  });

  it('falls when demand ends', () => {
    const levels = teunterSyntetosBabaiLevels([3, 3, 3, 3, 0, 0, 0, 0, 0, 0, 0, 0], 0.1, 0.2);
    expect(levels.at(-1)).toBeLessThan((levels[4] ?? 0) / 2);
  });

  it('knows at each period what it would know if the series ended there', () => {
    const counts = fc.array(fc.nat(9), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(counts, fc.nat(40), fc.double({ min: 0.01, max: 1, noNaN: true }), (series, at, beta) => {
        const seen = Math.min(at, series.length);
        const whole = teunterSyntetosBabaiLevels(series, 0.1, beta)[seen] ?? Number.NaN;
        const ended = teunterSyntetosBabaiLevels(series.slice(0, seen), 0.1, beta)[seen] ?? Number.NaN;
        expect(whole).toBeCloseTo(ended, 12);
      }),
    );
  });
});

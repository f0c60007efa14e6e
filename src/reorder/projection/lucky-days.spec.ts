import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LuckyDays } from './lucky-days.js';

describe('lucky days', () => {
  it('share luck by weight, fewer days first', () => {
    const days = new LuckyDays({ days: [8, 3, 5], weights: [3, 2, 5] });
    expect([0, 0.1999, 0.2, 0.6999, 0.7, 0.999999].map((luck) => days.by(luck))).toEqual([3, 3, 5, 5, 8, 8]);
  });

  it('are certain when only one number has weight', () => {
    const days = new LuckyDays({ days: [3, 4], weights: [0, 1] });
    expect([days.isCertain, days.first, days.by(0), days.by(0.99)]).toEqual([true, 4, 4, 4]);
  });

  it('are never fewer with more luck', () => {
    const takes = fc.array(
      fc.tuple(fc.integer({ min: -3, max: 40 }), fc.double({ min: 0.01, max: 1, noNaN: true })),
      {
        minLength: 1,
        maxLength: 8,
      },
    );
    const luck = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });
    fc.assert(
      fc.property(takes, luck, luck, (some, one, other) => {
        const days = new LuckyDays({
          days: some.map(([each]) => each),
          weights: some.map(([, weight]) => weight),
        });
        expect(days.by(Math.min(one, other))).toBeLessThanOrEqual(days.by(Math.max(one, other)));
      }),
    );
  });

  it('are refused without weight', () => {
    expect(() => new LuckyDays({ days: [3], weights: [0] })).toThrow('not all 0');
    expect(() => new LuckyDays({ days: [], weights: [] })).toThrow('not all 0');
    expect(() => new LuckyDays({ days: [1.5], weights: [1] })).toThrow('It takes 1.5 days');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drillScore, minutesBetween, percent } from './drill-score.js';

const facts = {
  uses: 8,
  tracedUses: 7,
  pieces: 3,
  explainedPieces: 2,
  containersToFind: 0,
  containersFound: 0,
  startedAt: '2026-03-01T09:00:00.000Z',
  closedAt: '2026-03-01T10:12:34.567Z',
};

describe('the score of a drill', () => {
  it('says what share was traced, balanced and found, and how long it took', () => {
    expect(drillScore(facts)).toEqual({
      tracedPercent: 87.5,
      balancedPercent: 66.6,
      foundPercent: null,
      minutes: 72.5,
    });
  });

  it('says a hundred per cent only of all, and nothing of nothing', () => {
    expect(percent(9_999, 10_000)).toBe(99.9);
    expect(percent(10_000, 10_000)).toBe(100);
    expect(percent(0, 0)).toBeNull();
  });

  it('stays between 0 and 100, grows with its part and is 100 of the whole only', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e9 }), fc.nat(1e9), (whole, part) => {
        const share = percent(part, whole) ?? Number.NaN;
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(100);
        expect(share === 100).toBe(part >= whole);
        expect(percent(part + 1, whole) ?? 0).toBeGreaterThanOrEqual(share);
      }),
    );
  });

  it('counts no minutes backwards, as when a device’s clock runs ahead', () => {
    expect(minutesBetween(facts.closedAt, facts.startedAt)).toBe(0);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { highestMet, judgedLevels, percentOf } from './effectiveness.js';

describe('levels of effectiveness checks', () => {
  // Levels A and B of 21 CFR 7.42(b)(3) [S], C to E [M]: no worked example was found published.
  it('ask for all, what was agreed, a tenth, a fiftieth, nobody', () => {
    const toCheck = (toTell: number, agreed: number | null) =>
      judgedLevels(toTell, 0, agreed).map((level) => level.toCheck);
    expect(toCheck(200, 50)).toEqual([200, 100, 20, 4, 0]);
    expect(toCheck(15, null)).toEqual([15, null, 2, 1, 0]);
    expect(toCheck(1, 11)).toEqual([1, 1, 1, 1, 0]);
    expect(toCheck(0, 50)).toEqual([0, 0, 0, 0, 0]);
  });

  it('are met when so many were told', () => {
    expect(judgedLevels(15, 2, null).map(({ met }) => met)).toEqual([false, null, true, true, true]);
    expect(highestMet(judgedLevels(15, 2, null))).toBe('C');
    expect(highestMet(judgedLevels(15, 8, 50))).toBe('B');
    expect(highestMet(judgedLevels(15, 15, null))).toBe('A');
    expect(highestMet(judgedLevels(15, 0, null))).toBe('E');
  });

  it('never ask for less of the same at a higher level, and A only when all were told', () => {
    fc.assert(
      fc.property(fc.nat(5_000), fc.nat(5_000), fc.integer({ min: 11, max: 99 }), (one, other, agreed) => {
        const [told, toTell] = [Math.min(one, other), Math.max(one, other)];
        const levels = judgedLevels(toTell, told, agreed);
        const counts = levels.map(({ toCheck }) => toCheck ?? 0);
        expect([...counts].sort((a, b) => b - a)).toEqual(counts);
        expect(levels[0]?.met).toBe(told === toTell);
        expect(percentOf(told, toTell) === 100).toBe(told === toTell && toTell > 0);
      }),
    );
  });
});

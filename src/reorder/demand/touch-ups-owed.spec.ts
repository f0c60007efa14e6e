import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRACE_DAYS, learnReturns, returnStillExpected } from './touch-ups-owed.js';

const window = { fromDays: 30, toDays: 40 };
const sum = (weights: ArrayLike<number>) => Array.from(weights).reduce((total, weight) => total + weight, 0);
const visits = (count: number, returnedAfter: number | null) =>
  Array.from({ length: count }, () => ({ day: -200, returnedAfter }));

describe('touch-ups owed', () => {
  it('come at the supposed rate in the middle of the window until visits tell', () => {
    const { rate, delays, visits: seen } = learnReturns([], window, 0.7);
    expect(rate).toBeCloseTo(0.7, 12);
    expect(seen).toBe(0);
    expect(sum(delays)).toBeCloseTo(1, 12);
    expect(delays.indexOf(Math.max(...delays))).toBe(35);
    expect(sum(delays.slice(0, 30))).toBe(0);
    expect(sum(delays.slice(41))).toBe(0);
  });

  it('come as often and as late as clients really did', () => {
    const { rate, delays } = learnReturns([...visits(300, 50), ...visits(700, null)], window, 0.7);
    expect(rate).toBeCloseTo(0.3, 1);
    expect(sum(delays.slice(47, 54))).toBeGreaterThan(0.9);
  });

  it('learn nothing from visits whose touch-up may still come', () => {
    const young = visits(50, null).map((visit) => ({ ...visit, day: -20 }));
    expect(learnReturns(young, window, 0.7)).toEqual(learnReturns([], window, 0.7));
  });

  it('are less likely the longer nobody came, and are given up at last', () => {
    const returns = learnReturns([...visits(70, 38), ...visits(30, null)], window, 0.7);
    const chances = [0, 34, 38, 41, 60].map((age) => returnStillExpected(returns, age)?.chance ?? 0);
    expect(chances).toEqual([...chances].sort((one, other) => other - one));
    expect(chances[0]).toBeCloseTo(returns.rate, 12);
    expect(returnStillExpected(returns, window.toDays + GRACE_DAYS + 1)).toBeNull();
  });

  it('fall on days whose weights add up to 1', () => {
    const past = fc.array(
      fc.record({ day: fc.integer({ min: -900, max: -1 }), returnedAfter: fc.option(fc.nat(200)) }),
    );
    fc.assert(
      fc.property(past, fc.nat(60), fc.nat(60), fc.nat(150), (seen, fromDays, more, age) => {
        const returns = learnReturns(seen, { fromDays, toDays: fromDays + more }, 0.7);
        expect(sum(returns.delays)).toBeCloseTo(1, 9);
        const still = returnStillExpected(returns, age);
        if (still === null) return;
        expect(still.chance > 0 && still.chance <= 1).toBe(true);
        expect(sum(still.dayWeights)).toBeCloseTo(1, 9);
      }),
    );
  });
});

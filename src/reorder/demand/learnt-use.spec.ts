import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PastSession, Visit } from './demand-facts.js';
import {
  amountDistribution,
  KIT_LIST_CHANCE,
  learnUse,
  meanAmount,
  sessionWeights,
  type UseInSession,
} from './learnt-use.js';

const brows: Visit = { procedureId: 'brows', visitKind: 'first session', artistId: 'ada' };
const session = (visit: Visit, day = -1): PastSession => ({
  ...visit,
  id: 'session',
  day,
  bookedOn: day,
  followsSessionId: null,
  uses: [],
});
const sessions = (visit: Visit, count: number, day = -1) =>
  Array.from({ length: count }, () => session(visit, day));
const uses = (visit: Visit, count: number, amount: number | null, day = -1): UseInSession[] =>
  Array.from({ length: count }, () => ({ ...visit, day, amount }));
const noKit = () => null;
const always = { availableFrom: -10_000, assumedAmount: 250 };

describe('what sessions take of an item', () => {
  it('is the kit list until sessions tell, and what they really took once they are many', () => {
    const kit = (_: Visit, level: string) => (level === 'all artists' ? 2 : null);
    const unknown = learnUse(sessionWeights([]), [], kit, always)(brows);
    expect(unknown.chance).toBeCloseTo(KIT_LIST_CHANCE, 12);
    expect(unknown).toMatchObject({ amount: { amounts: [2], weights: [1] }, amountFrom: 'kit list' });

    const learnt = learnUse(sessionWeights(sessions(brows, 400)), uses(brows, 100, 3), kit, always)(brows);
    expect(learnt.chance).toBeGreaterThan(0.24);
    expect(learnt.chance).toBeLessThan(0.28);
    expect(learnt).toMatchObject({ amount: { amounts: [3], weights: [1] }, amountFrom: 'sessions' });
    expect(learnt.effectiveSessions).toBeCloseTo(400, -1);
  });

  it('leans on all artists while one has done little, and on their own sessions later', () => {
    const ben = { ...brows, artistId: 'ben' };
    const chanceOfBen = (count: number) =>
      learnUse(
        sessionWeights([...sessions(brows, 200), ...sessions(ben, count)]),
        uses(brows, 180, 1),
        noKit,
        always,
      )(ben).chance;
    expect(chanceOfBen(0)).toBeGreaterThan(0.85);
    expect(chanceOfBen(4)).toBeLessThan(0.6);
    expect(chanceOfBen(100)).toBeLessThan(0.05);
  });

  it('does not count sessions from before it was there', () => {
    const weights = sessionWeights([...sessions(brows, 300, -200), ...sessions(brows, 10, -5)]);
    const chance = (availableFrom: number) =>
      learnUse(weights, uses(brows, 10, 1, -5), noKit, { availableFrom, assumedAmount: 1 })(brows).chance;
    expect(chance(-10)).toBeGreaterThan(0.9);
    expect(chance(-300)).toBeLessThan(0.1);
  });

  it('counts a use of unknown amount, and one that was refused, as a use', () => {
    const learnt = learnUse(sessionWeights(sessions(brows, 50)), uses(brows, 50, null), noKit, always)(brows);
    expect(learnt.chance).toBeGreaterThan(0.7);
    expect(learnt).toMatchObject({ amount: { amounts: [250] }, amountFrom: 'assumption' });
  });

  it('is a chance and an amount whatever happened', () => {
    const visits = fc.record({
      procedureId: fc.constantFrom('brows', 'lips'),
      visitKind: fc.constantFrom('first session' as const, 'refresh' as const),
      artistId: fc.constantFrom('ada', 'ben'),
    });
    const past = fc.record({
      visit: visits,
      day: fc.integer({ min: -2000, max: -1 }),
      amount: fc.option(fc.nat(5_000)),
    });
    fc.assert(
      fc.property(fc.array(past), visits, fc.nat(3), (many, asked, keep) => {
        const weights = sessionWeights(many.map(({ visit, day }) => session(visit, day)));
        const taken = many
          .filter((_, index) => index % 4 <= keep)
          .map(({ visit, day, amount }) => ({ ...visit, day, amount }));
        const { chance, amount } = learnUse(weights, taken, noKit, always)(asked);
        expect(chance >= 0 && chance <= 1).toBe(true);
        expect(amount.weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
        expect(amount.amounts.every((each) => Number.isInteger(each) && each >= 0)).toBe(true);
      }),
    );
  });

  it('keeps the mean of many amounts in a few', () => {
    const weights = fc.array(
      fc.tuple(fc.integer({ min: 1, max: 9_000 }), fc.double({ min: 0.01, max: 5, noNaN: true })),
      {
        minLength: 1,
        maxLength: 60,
      },
    );
    fc.assert(
      fc.property(weights, (pairs) => {
        const byAmount = new Map(pairs);
        const total = [...byAmount.values()].reduce((sum, weight) => sum + weight, 0);
        const mean = [...byAmount].reduce((sum, [amount, weight]) => sum + amount * weight, 0) / total;
        const few = amountDistribution(byAmount);
        expect(few.amounts.length).toBeLessThanOrEqual(16);
        expect(meanAmount(few)).toBeCloseTo(mean, 6);
      }),
    );
  });
});

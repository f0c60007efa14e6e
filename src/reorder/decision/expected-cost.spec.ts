import { expect, it } from 'vitest';
import { itemFacts, offerOf, sealed } from '../../../tests/support/planning-samples.js';
import { NEVER } from '../projection/item-facts.js';
import { Simulation } from '../projection/simulate.js';
import { orderNothing } from './batch-cost.js';
import { expectedCost, totalCostMinor, unitsLeft, usedLater } from './expected-cost.js';

const rates = { unitMinor: 10, orderMinor: 100, shortageMinor: 50, holdingMinorPerDay: 0.1 };

it('is the sum of its parts, by hand on an even need', () => {
  // Two a day of seven here for five days: used 7, missing 3, held over night 5 + 3 + 1.
  const facts = itemFacts({
    usesPerWeek: 0,
    days: 5,
    horizonDays: 5,
    expected: [0, 1, 2, 3, 4].map((firstDay) => ({
      source: 'booking',
      chance: 1,
      firstDay,
      dayWeights: [1],
      amount: { amounts: [2], weights: [1] },
    })),
    batches: [sealed(7, 1)],
    paths: 3,
  });
  const left = { unitMinor: 4, needPerDay: 2, lifeDays: NEVER, usableShare: 1 };
  const outcome = new Simulation(facts.stock, null, facts.draws, rates, { days: 5, tailDays: 0 }).evaluate(
    orderNothing,
  );
  expect(expectedCost(outcome, rates, left)).toMatchObject({
    wasteMinor: 0,
    shortageMinor: 150,
    orderMinor: 0,
    holdingMinor: 0.9,
    priceMinor: 0,
    leftMinor: 0,
    totalMinor: 150.9,
  });
  // Of three days four units are used later: at two a day, a unit-day for each of the two days on average.
  const short = new Simulation(facts.stock, null, facts.draws, rates, { days: 2, tailDays: 0 }).evaluate(
    orderNothing,
  );
  expect(unitsLeft(short, left)).toBeCloseTo(3, 9);
  expect(totalCostMinor(short, rates, left)).toBeCloseTo(0.1 * (5 + 3 + (3 * (3 / 2)) / 2) - 3 * 4, 9);
});

it('is never less for an order that costs more', () => {
  const facts = itemFacts({ usesPerWeek: 7, batches: [sealed(5, 1)], offers: [offerOf()] });
  const [offer] = facts.offers;
  const horizon = { days: 120, tailDays: 120 };
  const left = { unitMinor: 0, needPerDay: 1, lifeDays: NEVER, usableShare: 1 };
  const policy = { first: { day: 0, packs: 3 }, reorderPointUnits: 5, packs: 2 };
  let before = 0;
  for (const orderMinor of [0, 100, 1_000]) {
    const all = { ...rates, orderMinor };
    const outcome = new Simulation(
      facts.stock,
      offer?.replenishment ?? null,
      facts.draws,
      all,
      horizon,
    ).evaluate(policy);
    const cost = totalCostMinor(outcome, all, left);
    expect(cost).toBeGreaterThan(before);
    before = cost;
  }
});

it('uses no more of what is left than of a batch', () => {
  expect(usedLater(20, { needPerDay: 2, lifeDays: NEVER, usableShare: 0.25 })).toMatchObject({
    usedUnits: 5,
    wastedUnits: 15,
  });
});

it('reckons what is left when the drawn days end by the mean need and its life', () => {
  expect(usedLater(20, { needPerDay: 2, lifeDays: NEVER, usableShare: 1 })).toEqual({
    usedUnits: 20,
    wastedUnits: 0,
    unitDays: 100,
  });
  expect(usedLater(20, { needPerDay: 2, lifeDays: 5, usableShare: 1 })).toEqual({
    usedUnits: 10,
    wastedUnits: 10,
    unitDays: 25 + 50,
  });
  expect(usedLater(20, { needPerDay: 0, lifeDays: NEVER, usableShare: 1 })).toEqual({
    usedUnits: 0,
    wastedUnits: 20,
    unitDays: 0,
  });
  expect(usedLater(20, { needPerDay: 2, lifeDays: -3, usableShare: 1 })).toEqual({
    usedUnits: 0,
    wastedUnits: 20,
    unitDays: 0,
  });
});

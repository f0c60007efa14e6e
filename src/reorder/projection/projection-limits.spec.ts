/**
 * The simulation where somebody else knows the answer. Values marked R were computed outside with R 4.2.2 or by an exact
 * dynamic programme. A drawn figure agrees when it is within 4 of its standard errors.
 */
import normalDensity from '@stdlib/stats-base-dists-normal-pdf';
import { describe, expect, it } from 'vitest';
import { economicOrderQuantity, lotSizeCost, newsvendor } from '../../../tests/support/stock-theory.js';
import type { DemandModel } from '../demand/demand-model.js';
import { type DemandDraws, drawDemand } from './demand-draws.js';
import { type Batch, type CostRates, NEVER, type Replenishment } from './item-facts.js';
import type { Estimate } from './outcome.js';
import { Simulation } from './simulate.js';

const seed = 20_261_126;
const one = { amounts: [1], weights: [1] };
const noRates: CostRates = { unitMinor: 0, orderMinor: 0, shortageMinor: 0, holdingMinorPerDay: 0 };
const noOrders = { first: null, reorderPointUnits: null, packs: 0 };

/** Poisson, so much a day. */
function poissonDays(mean: number, days: number, expected: DemandModel['expected'] = []): DemandModel {
  const level = {
    method: 'level assumed' as const,
    weight: 1,
    kind: 'negative binomial' as const,
    mean,
    dispersion: 1,
  };
  const every = new Float64Array(days).fill(1);
  return {
    days,
    expected,
    unforeseen: [{ components: [level], periodDays: 1, dayShares: every, unknownShares: every, amount: one }],
  };
}

function pieces(containers: number, lastDay = NEVER): Batch {
  return { containers, unitsEach: 1, lastDay, opened: false, costEachMinor: null };
}

function expectWithin(estimate: Estimate | undefined, value: number): void {
  expect(estimate).toBeDefined();
  if (!estimate) return;
  expect(estimate.standardError).toBeGreaterThan(0);
  expect(Math.abs(estimate.mean - value) / estimate.standardError).toBeLessThan(4);
}

describe('first expired, first out, without orders', () => {
  it.each([
    // Days are counted from 1 there: last day 7 is the seventh.
    {
      name: 'one lot',
      mean: 1,
      lots: [pieces(10, 6)],
      days: 7,
      waste: 3.2013204982,
      unmet: 0.2013204982,
      short: 0.0985207941,
    },
    {
      name: 'two lots',
      mean: 0.8,
      lots: [pieces(6, 11), pieces(4, 4)],
      days: 12,
      waste: 1.6472300526,
      unmet: 1.2472300526,
      short: 0.4487211543,
    },
  ])(
    'wastes and misses what the exact dynamic programme says: $name [R]',
    ({ mean, lots, days, waste, unmet, short }) => {
      const draws = drawDemand(poissonDays(mean, days), { paths: 200_000, seed });
      const stock = { batches: lots, onTheWay: [], openedLifeDays: NEVER };
      const outcome = new Simulation(stock, null, draws, noRates, { days, tailDays: 0 }).evaluate(noOrders);
      expectWithin(outcome.wastedUnits, waste);
      expectWithin(outcome.unmetUnits, unmet);
      expectWithin(outcome.short, short);
    },
  );
});

describe('lead-time demand, Poisson 0.7 a day over 3, 5 or 8 days', () => {
  const arrival = { days: [3, 5, 8], weights: [0.2, 0.5, 0.3] };
  const horizon = { days: 8, tailDays: 0 };
  /** The chance of not running short of so much before an order that is on the way arrives. */
  const enough = (draws: DemandDraws, units: number): Estimate => {
    const onTheWay = [{ containers: 1_000, unitsEach: 1, arrival, lifeDays: NEVER }];
    const stock = { batches: [pieces(units)], onTheWay, openedLifeDays: NEVER };
    const { mean, standardError } = new Simulation(stock, null, draws, noRates, horizon).evaluate(
      noOrders,
    ).short;
    return { mean: 1 - mean, standardError };
  };
  /** Of each chance the smallest stock that is enough with it. */
  const smallest = (draws: DemandDraws, chances: readonly number[], from: number): number[] => {
    const stocks: number[] = [];
    for (let units = from, seen = enough(draws, from - 1).mean; stocks.length < chances.length; units++) {
      // One below where it begins is not enough.
      while (seen >= (chances[stocks.length] ?? 1)) stocks.push(units - 1);
      seen = enough(draws, units).mean;
    }
    return stocks;
  };

  it('is met by 7, 8, 9 and 10 at 90, 95, 98 and 99 %, by 8 with 0.96070 [R, exact]', () => {
    const draws = drawDemand(poissonDays(0.7, 8), { paths: 100_000, seed });
    expect(smallest(draws, [0.9, 0.95, 0.98, 0.99], 6)).toEqual([7, 8, 9, 10]);
    expectWithin(enough(draws, 8), 0.9606989679);
  });

  it('needs exactly b more for a known booking of b [identity]', () => {
    const bookingOf = (amount: number) => ({
      source: 'booking' as const,
      chance: 1,
      firstDay: 1,
      dayWeights: [1],
      amount: { amounts: [amount], weights: [1] },
    });
    const size = { paths: 4_000, seed };
    const chances = [0.5, 0.9, 0.95, 0.99];
    const without = smallest(drawDemand(poissonDays(0.7, 8), size), chances, 1);
    for (const booked of [1, 4, 25]) {
      const withIt = drawDemand(poissonDays(0.7, 8, [bookingOf(booked)]), size);
      expect(smallest(withIt, chances, booked + 1)).toEqual(without.map((units) => units + booked));
    }
  });
});

describe('even demand, no lead time, nothing expires', () => {
  /**
   * Costs of ordering so many whole days' demand each time, per unit of time, over whole cycles. What lies overnight
   * is half a day's demand less than what lies on average in the continuous model.
   */
  const simulated = (
    facts: { orderCost: number; holdingCost: number; demand: number },
    dayUnits: number,
    cycleDays: number,
  ) => {
    const days = cycleDays * Math.floor(26_000 / cycleDays);
    const draws: DemandDraws = {
      paths: 1,
      days,
      offsets: Int32Array.of(0, days),
      eventDays: Uint16Array.from({ length: days }, (_, day) => day),
      eventUnits: new Int32Array(days).fill(dayUnits),
      seed,
    };
    const replenishment: Replenishment = {
      packContainers: dayUnits,
      unitsEach: 1,
      minimumPacks: 1,
      prices: [],
      leadTime: { days: [0], weights: [1] },
      nextOrderDay: Int32Array.from({ length: days }, (_, day) => day),
      lifeDays: NEVER,
    };
    const daysOfTime = facts.demand / dayUnits;
    const rates = {
      ...noRates,
      orderMinor: facts.orderCost,
      holdingMinorPerDay: facts.holdingCost / daysOfTime,
    };
    const stock = { batches: [], onTheWay: [], openedLifeDays: NEVER };
    const { costMinor, unmetUnits } = new Simulation(stock, replenishment, draws, rates, {
      days,
      tailDays: 0,
    }).evaluate({
      first: null,
      reorderPointUnits: 0,
      packs: cycleDays,
    });
    expect(unmetUnits.mean).toBe(0);
    return (costMinor.mean / days) * daysOfTime + (facts.holdingCost * dayUnits) / 2;
  };

  it.each([
    {
      facts: { orderCost: 8, holdingCost: 0.225, demand: 1300 },
      dayUnits: 1,
      best: 304,
      source: 'Snyder & Shen, ex. 3.1 [S]',
    },
    {
      facts: { orderCost: 12_000, holdingCost: 0.3, demand: 8000 },
      dayUnits: 2,
      best: 25_298,
      source: 'Hillier & Lieberman [S]',
    },
  ])('is best ordered by $best, at the cost of Harris 1913: $source', ({ facts, dayUnits, best }) => {
    const { quantity, cost } = economicOrderQuantity(facts);
    const around = [-8, -4, -2, -1, 0, 1, 2, 4, 8].map((more) => best + more * dayUnits);
    const costs = around.map((units) => simulated(facts, dayUnits, units / dayUnits));
    expect(around[costs.indexOf(Math.min(...costs))]).toBe(best);
    // The flat curve around the best.
    for (const factor of [0.25, 0.5, 0.8, 1]) {
      const units = Math.round((factor * quantity) / dayUnits) * dayUnits;
      const seen = simulated(facts, dayUnits, units / dayUnits);
      expect(seen).toBeCloseTo(lotSizeCost(facts, units), 6);
      expect(seen / cost).toBeCloseTo((units / quantity + quantity / units) / 2, 9);
    }
  });
});

describe('one period of normal demand, nothing left worth anything', () => {
  it('is best begun with 56.60 at a cost of 1.9976: Snyder & Shen, ex. 4.3 [S, to these digits by R]', () => {
    // A unit here is a hundredth there.
    const amounts = Array.from({ length: 10_001 }, (_, hundredths) => hundredths);
    const amount = { amounts, weights: amounts.map((hundredths) => normalDensity(hundredths / 100, 50, 8)) };
    const expected = [{ source: 'booking' as const, chance: 1, firstDay: 0, dayWeights: [1], amount }];
    const draws = drawDemand({ days: 1, expected, unforeseen: [] }, { paths: 100_000, seed });
    const rates = { ...noRates, unitMinor: 0.0018, shortageMinor: 0.007 };
    const cost = (hundredths: number): Estimate => {
      const stock = { batches: [pieces(hundredths, 0)], onTheWay: [], openedLifeDays: NEVER };
      return new Simulation(stock, null, draws, rates, { days: 1, tailDays: 0 }).evaluate(noOrders).costMinor;
    };
    const best = newsvendor(50, 8, 0.18, 0.7);
    expectWithin(cost(5660), 1.9976051932);
    expect(best.cost).toBeCloseTo(1.9976051932, 9);
    const tried = Array.from({ length: 11 }, (_, step) => 5560 + step * 20);
    const costs = tried.map((hundredths) => cost(hundredths).mean);
    const found = tried[costs.indexOf(Math.min(...costs))] ?? 0;
    // The quantile of the draws has a deviation of 0.04, and one step is 0.2.
    expect(Math.abs(found / 100 - best.quantity)).toBeLessThan(0.3);
  });
});

import { describe, expect, it } from 'vitest';
import { demandOf, orderDaysEvery, replenishmentOf } from '../../../tests/support/planning-samples.js';
import type { DemandModel } from '../demand/demand-model.js';
import { drawDemand } from '../projection/demand-draws.js';
import { NEVER } from '../projection/item-facts.js';
import { Simulation } from '../projection/simulate.js';
import { basePolicy, daysBetweenOrders } from './base-policy.js';
import { batchCost } from './batch-cost.js';
import { totalCostMinor } from './expected-cost.js';
import { FirstOrderSearch } from './first-order.js';

/** So many units every day, without chance. */
function evenNeed(perDay: number, days: number): DemandModel {
  const [series] = demandOf({ days }).unforeseen;
  if (series === undefined) throw new Error('The sample has a series.');
  return {
    days,
    expected: [],
    unforeseen: [
      {
        ...series,
        components: [{ method: 'bootstrap', weight: 1, kind: 'empirical', counts: [perDay] }],
        periodDays: 1,
        dayShares: new Float64Array(days).fill(1),
      },
    ],
  };
}

describe('with even need and no expiry', () => {
  // Economic order quantity: fixed cost 8, holding 0.225, need 1300 → 304.0467800264, cost 68.4105255059: Snyder & Shen,
  // Fundamentals of Supply Chain Theory 2e, example 3.1 [SEEN]; formula: Harris 1913. A year has 100 days here.
  const draws = drawDemand(evenNeed(13, 200), { paths: 1, seed: 1 });
  const replenishment = replenishmentOf({
    packContainers: 1,
    leadTime: { days: [0], weights: [1] },
    prices: [{ fromPacks: 1, packPriceMinor: 1 }],
  });
  const rates = { unitMinor: 1, orderMinor: 8, shortageMinor: 50, holdingMinorPerDay: 0.225 / 100 };
  const base = basePolicy(replenishment, NEVER, draws, rates, 0.95, 100, 1, 1);

  it('orders the quantity of Harris, as near as whole days allow', () => {
    expect(base.packs).toBeGreaterThanOrEqual(23 * 13);
    expect(base.packs).toBeLessThanOrEqual(24 * 13);
  });

  it('costs a unit what it costs in the long run', () => {
    // On an evening the day's need is gone already: half a day less is held than in the continuous formula.
    const perUnit = 68.410_525_505_9 / 1_300 - (0.225 / 100) * 0.5;
    expect(base.left.unitMinor).toBeCloseTo(perUnit, 3);
  });

  it('finds the same quantity as first order whatever the horizon', () => {
    for (const days of [60, 100, 140]) {
      const simulation = new Simulation(
        { batches: [], onTheWay: [], openedLifeDays: NEVER },
        replenishment,
        draws,
        rates,
        { days, tailDays: 200 - days },
      );
      const search = new FirstOrderSearch({
        simulation,
        replenishment,
        base,
        rates,
        orderDays: Array.from({ length: days }, (_, day) => day),
        dueIndex: 0,
        coarsePaths: 1,
      });
      const best = search.fine(search.coarse());
      expect(best.dayIndex).toBe(0);
      expect(best.packs).toBeGreaterThanOrEqual(22 * 13);
      expect(best.packs).toBeLessThanOrEqual(25 * 13);
      const atHarris = simulation.evaluate(search.trials.policy({ dayIndex: 0, packs: 304 }));
      expect(best.costMinor).toBeLessThanOrEqual(totalCostMinor(atHarris, rates, base.left));
    }
  });

  it('has the flat cost of Harris: half as much again of Q/Q* and Q*/Q', () => {
    const best = 304.046_780_026_4;
    for (const packs of [152, 228, 456, 608]) {
      const cost = batchCost(packs, replenishment, NEVER, draws, rates, 13, 1).perUsedUnitMinor;
      const ratio = (packs / best + best / packs) / 2;
      expect(cost + 0.001_125).toBeCloseTo((68.410_525_505_9 / 1_300) * ratio, 3);
    }
  });
});

describe('the base policy', () => {
  const usual = { unitMinor: 150, orderMinor: 800, shortageMinor: 0, holdingMinorPerDay: 0.04 };

  it('orders at one below what is needed, at the target, until an order of the next order day is here', () => {
    const draws = drawDemand(demandOf({ usesPerWeek: 4.9, days: 200 }), { paths: 8_000, seed: 3 });
    // The reference: 8 at 95 % over the lead time alone; one day more of Poisson 0.7 raises it to 9.
    const base = basePolicy(replenishmentOf(), NEVER, draws, usual, 0.95, 120, 1, 200);
    expect(base.reorderPointUnits).toBe(9 - 1);
    const weekly = basePolicy(
      replenishmentOf({ nextOrderDay: orderDaysEvery(7) }),
      NEVER,
      draws,
      usual,
      0.95,
      120,
      1,
      200,
    );
    expect(weekly.reorderPointUnits).toBeGreaterThan(base.reorderPointUnits + 3);
  });

  it('counts what does not suffice for one use as nothing', () => {
    const draws = drawDemand(demandOf({ usesPerWeek: 0.01, days: 200 }), { paths: 400, seed: 3 });
    expect(basePolicy(replenishmentOf(), NEVER, draws, usual, 0.95, 120, 450.2, 50).reorderPointUnits).toBe(
      450,
    );
  });

  it('orders no more at once than is worth while in date', () => {
    const draws = drawDemand(demandOf({ usesPerWeek: 7, days: 200 }), { paths: 500, seed: 3 });
    const short = replenishmentOf({
      packContainers: 1,
      lifeDays: 10,
      prices: [{ fromPacks: 1, packPriceMinor: 150 }],
    });
    const base = basePolicy(short, NEVER, draws, usual, 0.95, 120, 1, 200);
    expect(base.packs).toBeLessThanOrEqual(12);
    expect(base.packs).toBeGreaterThanOrEqual(5);
    expect(base.mostPacks).toBeLessThan(40);
    expect(base.cycleDays).toBeLessThanOrEqual(11);
  });

  it('takes a price break that is worth it', () => {
    const draws = drawDemand(demandOf({ usesPerWeek: 7, days: 200 }), { paths: 500, seed: 3 });
    const prices = [
      { fromPacks: 1, packPriceMinor: 150 },
      { fromPacks: 400, packPriceMinor: 120 },
    ];
    const cheap = replenishmentOf({ packContainers: 1, prices });
    expect(basePolicy(cheap, NEVER, draws, { ...usual, unitMinor: 120 }, 0.95, 120, 1, 200).packs).toBe(400);
  });

  it('orders the least, and never anything endless, when nothing is needed', () => {
    const draws = drawDemand(demandOf({ usesPerWeek: 0, days: 200 }), { paths: 50, seed: 3 });
    const base = basePolicy(replenishmentOf({ minimumPacks: 3 }), NEVER, draws, usual, 0.95, 120, 1, 50);
    expect(base).toMatchObject({ packs: 3, reorderPointUnits: 0, meanNeedPerDay: 0 });
    expect(base.left.unitMinor).toBe(0);
  });
});

it('counts the days between order days', () => {
  expect(daysBetweenOrders(orderDaysEvery(1), 120)).toBe(1);
  expect(daysBetweenOrders(orderDaysEvery(7), 119)).toBe(7);
  expect(daysBetweenOrders(new Int32Array(120).fill(NEVER), 120)).toBe(120);
});

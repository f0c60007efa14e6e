import { describe, expect, it } from 'vitest';
import { itemFacts, offerOf } from '../../../tests/support/planning-samples.js';
import { Simulation } from '../projection/simulate.js';
import { orderNothing } from './batch-cost.js';
import { shortageFromTarget } from './shortage-cost.js';
import { weighOffers } from './weigh-offers.js';

describe('what a missing unit costs, by the critical ratio', () => {
  it('is what makes the target just right', () => {
    // Newsvendor: under 0.70 and over 0.18 have the ratio 0.70/0.88: Snyder & Shen 2e, example 4.3 [SEEN].
    expect(shortageFromTarget(0.18, 0.7 / 0.88, 1e9)).toBeCloseTo(0.7, 9);
    // Cachon & Terwiesch 3e, Q12.1 [SEEN]: under 8, over 4.
    expect(shortageFromTarget(4, 2 / 3, 1e9)).toBeCloseTo(8, 9);
  });

  it('is nothing at a target of 0 and finite at one of 100 %', () => {
    expect(shortageFromTarget(5, 0, 2_000)).toBe(0);
    expect(shortageFromTarget(5, 1, 2_000)).toBeCloseTo(5 * 2_000, 6);
  });
});

describe('in the limit of the newsvendor', () => {
  // A need of N(50, 8) each day, in tenths, what is left over is worth nothing the day after, ordering costs nothing:
  // over 0.18 is the price of a unit, the target is the critical ratio 0.70/0.88, and 56.6039559274 should be ordered:
  // Snyder & Shen 2e, example 4.3 [SEEN].
  const amounts: number[] = [];
  const weights: number[] = [];
  for (let tenths = 100; tenths <= 900; tenths++) {
    amounts.push(tenths);
    weights.push(Math.exp(-(((tenths - 500) / 80) ** 2) / 2));
  }
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const facts = itemFacts({
    usesPerWeek: 0,
    days: 3,
    horizonDays: 2,
    paths: 20_000,
    expected: [0, 1, 2].map((firstDay) => ({
      source: 'booking',
      chance: 1,
      firstDay,
      dayWeights: [1],
      amount: { amounts, weights: weights.map((weight) => weight / sum) },
    })),
    settings: { serviceTargetPerMille: (1_000 * 0.7) / 0.88, orderCostMinor: 0, holdingPerYearPerMille: 0 },
    offers: [
      {
        ...offerOf({
          packContainers: 1,
          prices: [{ fromPacks: 1, packPriceMinor: 0.18 }],
          leadTime: { days: [0], weights: [1] },
          lifeDays: 0,
        }),
        deliveryCostMinor: 0,
      },
    ],
  });
  const { draws, stock, settings, offers, horizonDays } = facts;
  const horizon = { days: horizonDays, tailDays: draws.days - horizonDays };
  const free = { unitMinor: 0.18, orderMinor: 0, shortageMinor: 0, holdingMinorPerDay: 0 };
  const nothing = new Simulation(stock, null, draws, free, horizon).evaluate(orderNothing);
  const { weighed, shortage } = weighOffers(facts, settings, offers, 0.18, 500, nothing);

  it('one too many is wasted for certain, and a missing one costs what the critical ratio says', () => {
    expect(shortage.oneTooMany?.wasteChance).toBeCloseTo(1, 9);
    expect(shortage.minorPerUnit).toBeCloseTo(0.7, 6);
  });

  it('orders the quantity of the newsvendor, within what chance allows', () => {
    const [chosen] = weighed;
    const best = chosen?.best;
    expect(best?.dayIndex).toBe(0);
    // Error of a quantile: root of p (1 − p) / n over the density there, in tenths.
    const p = 0.7 / 0.88;
    const density = Math.exp(-(((566.04 - 500) / 80) ** 2) / 2) / (80 * Math.sqrt(2 * Math.PI));
    const error = Math.sqrt((p * (1 - p)) / 20_000) / density;
    expect(Math.abs((best?.packs ?? 0) - 566.04)).toBeLessThan(4 * error + 1);
  });
});

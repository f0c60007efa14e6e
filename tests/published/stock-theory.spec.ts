import normalQuantile from '@stdlib/stats-base-dists-normal-quantile';
import poissonQuantile from '@stdlib/stats-base-dists-poisson-quantile';
import { describe, expect, it } from 'vitest';
import {
  criticalRatio,
  economicOrderQuantity,
  lotSizeCost,
  newsvendor,
  normalReorderPoint,
  unitNormalLoss,
} from '../support/stock-theory.js';

describe('the economic order quantity', () => {
  it('is that of Snyder & Shen, Fundamentals of Supply Chain Theory, 2nd ed., example 3.1 [S; to these digits by R]', () => {
    const { quantity, cost } = economicOrderQuantity({ orderCost: 8, holdingCost: 0.225, demand: 1300 });
    expect(quantity).toBeCloseTo(304.0467800264, 10);
    expect(cost).toBeCloseTo(68.4105255059, 10);
  });

  it('is that of Hillier & Lieberman, 7th ed., of Harris 1913 [S]', () => {
    const { quantity, cost } = economicOrderQuantity({ orderCost: 12_000, holdingCost: 0.3, demand: 8000 });
    expect(quantity).toBeCloseTo(25_298.2, 1);
    expect(cost).toBeCloseTo(7589.5, 1);
  });

  it('costs little to miss: half of the ratio and its inverse together', () => {
    const facts = { orderCost: 8, holdingCost: 0.225, demand: 1300 };
    const { quantity, cost } = economicOrderQuantity(facts);
    expect(lotSizeCost(facts, quantity * 2) / cost).toBeCloseTo(1.25, 12);
    expect(lotSizeCost(facts, quantity / 2) / cost).toBeCloseTo(1.25, 12);
  });

  it('refuses what has no answer', () => {
    expect(() => economicOrderQuantity({ orderCost: 0, holdingCost: 1, demand: 1 })).toThrow(
      'The cost of an order is 0: more than 0 is allowed.',
    );
  });
});

describe('the newsvendor with normal demand', () => {
  it('is that of Snyder & Shen, 2nd ed., example 4.3 [S; to these digits by R]', () => {
    const { quantity, cost } = newsvendor(50, 8, 0.18, 0.7);
    expect(quantity).toBeCloseTo(56.6039559274, 9);
    expect(cost).toBeCloseTo(1.9976051932, 9);
  });

  it('is that of Cachon & Terwiesch, 3rd ed., Q12.1, with the exact quantile [S]', () => {
    // The book has 235.2, since its table rounds z up to 0.44.
    expect(newsvendor(200, 80, 4, 8).quantity).toBeCloseTo(234.4581839, 7);
  });

  it('weighs one too many against one too few', () => {
    expect(criticalRatio(1, 19)).toBe(0.95);
    expect(criticalRatio(0, 1)).toBe(1);
    expect(criticalRatio(1, 0)).toBe(0);
    expect(() => criticalRatio(0, 0)).toThrow('not both 0');
  });
});

describe('normal stock theory', () => {
  it('orders at the demand of the lead time and its safety stock [S; to these digits by R]', () => {
    expect(normalReorderPoint(30, 5, 10, 0.95)).toBeCloseTo(326.0074193938, 9);
  });

  it('knows the unit normal loss [R; the second S]', () => {
    expect(unitNormalLoss(1)).toBeCloseTo(0.0833154706, 10);
    expect(unitNormalLoss(1.3)).toBeCloseTo(0.0455279621, 10);
    // Far out it stays a small number above 0 and does not cancel below.
    expect(unitNormalLoss(6)).toBeGreaterThan(0);
  });
});

describe('quantiles of the library', () => {
  it.each([
    [0.95, 1.644853627],
    [0.975, 1.9599639845],
    [0.98, 2.0537489106],
    [0.99, 2.326347874],
  ])('of the normal distribution at %d are those of R', (chance, z) => {
    expect(normalQuantile(chance, 0, 1)).toBeCloseTo(z, 10);
  });

  it.each([
    [0.3, [0, 1, 1, 2, 2, 3]],
    [2.5, [2, 5, 5, 6, 7, 9]],
    [6, [6, 9, 10, 12, 12, 15]],
  ])('of the Poisson distribution with mean %d are those of R', (mean, quantiles) => {
    expect([0.5, 0.9, 0.95, 0.98, 0.99, 0.999].map((chance) => poissonQuantile(chance, mean))).toEqual(
      quantiles,
    );
  });
});

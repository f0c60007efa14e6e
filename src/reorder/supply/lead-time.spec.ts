import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { planningAssumptions } from '../settings/planning-assumptions.js';
import {
  daysWithin,
  LONGEST_LEAD_TIME_DAYS,
  leadTimeOf,
  MOST_ORDERS,
  type OrderArrival,
  QUOTE_COUNTS_AS_ORDERS,
} from './lead-time.js';

const arrival = (orderId: string, days: number, orderedOn = '2026-03-20', pieces = 1): OrderArrival => ({
  orderId,
  orderedOn,
  arrivedOn: DateTime.fromISO(orderedOn, { zone: 'utc' }).plus({ days }).toISODate() ?? '',
  pieces,
});

describe('the lead time of a supplier', () => {
  it('is an assumption while nobody says anything and nothing came', () => {
    const { value } = planningAssumptions.leadTimeDays;
    expect(leadTimeOf([], null)).toEqual({
      distribution: { days: [value], weights: [1] },
      arrived: { days: [value], weights: [1] },
      basis: 'assumed',
      quotedDays: null,
      orders: 0,
      leftOut: 0,
      medianDays: value,
      days95: value,
    });
  });

  it('is what the supplier says while nothing came, none at all included', () => {
    expect(leadTimeOf([], 0)).toMatchObject({
      basis: 'quoted',
      distribution: { days: [0], weights: [1] },
      days95: 0,
    });
  });

  it('is what orders took, and the word of the supplier as three more of them', () => {
    const seen = leadTimeOf([arrival('a', 9), arrival('b', 4)], 5);
    expect(seen).toMatchObject({
      basis: 'quoted and learnt',
      orders: 2,
      leftOut: 0,
      medianDays: 5,
      days95: 9,
    });
    expect(seen.distribution.days).toEqual([4, 5, 9]);
    const [four, five, nine] = seen.distribution.weights;
    expect(four).toBeCloseTo(1 / (QUOTE_COUNTS_AS_ORDERS + 2), 12);
    expect(five).toBeCloseTo(3 / 5, 12);
    expect(nine).toBeCloseTo(1 / 5, 12);
    expect(leadTimeOf([arrival('a', 9)], null).basis).toBe('learnt');
  });

  it('counts parts of an order by their own arrival, and the order once', () => {
    const { distribution, orders } = leadTimeOf([arrival('a', 2), arrival('a', 8), arrival('b', 8)], null);
    expect(orders).toBe(2);
    expect(distribution).toEqual({ days: [2, 8], weights: [0.25, 0.75] });
  });

  it('weighs parts of an order by the pieces they brought', () => {
    const parts = [arrival('a', 2, '2026-03-20', 1), arrival('a', 20, '2026-03-20', 99)];
    expect(leadTimeOf(parts, null)).toMatchObject({
      orders: 1,
      medianDays: 20,
      distribution: { days: [2, 20], weights: [0.01, 0.99] },
    });
  });

  it('grows with orders that are waited for longer than usual, unless they are lost', () => {
    const seen = [arrival('a', 5), arrival('b', 5), arrival('c', 10)];
    const since = (orderedOn: string) => [
      { orderId: 'awaited', orderedOn, today: '2026-03-20', missingPieces: 3 },
    ];
    const usual = leadTimeOf(seen, null);
    expect(leadTimeOf(seen, null, since('2026-03-16'))).toEqual(usual);
    // By what came alone an order that is awaited is judged: never by its own age.
    expect(leadTimeOf(seen, null, since('2026-03-05')).arrived).toEqual(usual.distribution);
    // Eight days: it takes as long as the one of ten that was seen.
    const eight = leadTimeOf(seen, null, since('2026-03-12'));
    expect(eight).toMatchObject({ orders: 4, distribution: { days: [5, 10], weights: [0.5, 0.5] } });
    expect(leadTimeOf(seen, null, since('2026-03-05'))).toMatchObject({ orders: 4, days95: 15 });
    expect(leadTimeOf(seen, null, since('2025-12-01'))).toEqual(usual);
    expect(leadTimeOf([], 5, since('2026-03-10'))).toMatchObject({ basis: 'quoted and learnt', days95: 10 });
  });

  it('grows with the rest of an order that is awaited longer than usual, by its share of the order', () => {
    const seen = [arrival('a', 5, '2026-03-01', 3), arrival('b', 5)];
    const rest = (today: string) => [{ orderId: 'a', orderedOn: '2026-03-01', today, missingPieces: 1 }];
    const usual = leadTimeOf(seen, null);
    // It is no later than what came.
    expect(leadTimeOf(seen, null, rest('2026-03-06'))).toEqual(usual);
    expect(leadTimeOf(seen, null, rest('2026-03-13'))).toMatchObject({
      orders: 2,
      distribution: { days: [5, 12], weights: [0.875, 0.125] },
      days95: 12,
    });
    // Given up, it tells nothing, and what came is the whole order.
    expect(leadTimeOf(seen, null, rest('2026-04-30'))).toEqual(usual);
  });

  it('leaves out and counts what came before its order or later than a year', () => {
    const lines = [
      arrival('a', -1),
      arrival('b', LONGEST_LEAD_TIME_DAYS + 1),
      arrival('c', LONGEST_LEAD_TIME_DAYS),
    ];
    expect(leadTimeOf(lines, null)).toMatchObject({
      orders: 1,
      leftOut: 2,
      medianDays: LONGEST_LEAD_TIME_DAYS,
    });
    expect(leadTimeOf([arrival('a', -1)], null)).toMatchObject({ basis: 'assumed', orders: 0, leftOut: 1 });
  });

  it('counts the latest orders only', () => {
    const old = Array.from({ length: MOST_ORDERS }, (_, index) => arrival(`old ${index}`, 30, '2024-01-01'));
    const late = Array.from({ length: MOST_ORDERS }, (_, index) => arrival(`late ${index}`, 3, '2026-01-01'));
    expect(leadTimeOf([...old, ...late], null)).toMatchObject({
      orders: MOST_ORDERS,
      distribution: { days: [3], weights: [1] },
    });
  });

  it('counts calendar days, also over a change of the clock', () => {
    expect(leadTimeOf([arrival('a', 2, '2026-03-28'), arrival('b', 2, '2026-10-24')], null)).toMatchObject({
      distribution: { days: [2], weights: [1] },
    });
  });

  const anyArrivals = fc.array(
    fc
      .record({ order: fc.integer({ min: 0, max: 20 }), days: fc.integer({ min: -5, max: 400 }) })
      .map(({ order, days }) => arrival(`order ${order}`, days)),
    { maxLength: 80 },
  );
  const anyQuote = fc.option(fc.integer({ min: 0, max: LONGEST_LEAD_TIME_DAYS }));

  it('is always a distribution over rising days whose weights add up to 1, whatever is given', () => {
    fc.assert(
      fc.property(anyArrivals, anyQuote, (arrivals, quote) => {
        const { distribution, medianDays, days95 } = leadTimeOf(arrivals, quote);
        const { days, weights } = distribution;
        expect(days.length).toBe(weights.length);
        expect(days.length).toBeGreaterThan(0);
        expect(days).toEqual([...new Set(days)].sort((one, other) => one - other));
        expect(weights.every((weight) => weight > 0 && weight <= 1)).toBe(true);
        expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
        expect(days.every((each) => each >= 0 && each <= LONGEST_LEAD_TIME_DAYS)).toBe(true);
        expect(medianDays).toBeLessThanOrEqual(days95);
      }),
    );
  });

  it('does not depend on the order in which arrivals are listed', () => {
    fc.assert(
      fc.property(anyArrivals, anyQuote, (arrivals, quote) => {
        const { distribution, orders } = leadTimeOf(arrivals, quote);
        const turned = leadTimeOf([...arrivals].reverse(), quote);
        expect(turned.orders).toBe(orders);
        expect(turned.distribution.days).toEqual(distribution.days);
        for (const [index, weight] of distribution.weights.entries()) {
          expect(turned.distribution.weights[index]).toBeCloseTo(weight, 12);
        }
      }),
    );
  });

  it('comes closer to what is seen, the more orders are seen', () => {
    const mean = (orders: number) => {
      const arrivals = Array.from({ length: orders }, (_, index) => arrival(`order ${index}`, 10));
      const { days, weights } = leadTimeOf(arrivals, 5).distribution;
      return days.reduce((sum, each, index) => sum + each * (weights[index] ?? 0), 0);
    };
    const means = [0, 1, 3, 10, MOST_ORDERS].map(mean);
    expect(means).toEqual([...means].sort((one, other) => one - other));
    expect(means[0]).toBe(5);
    expect(means[2]).toBeCloseTo(7.5, 12);
    expect(means[4]).toBeGreaterThan(9.7);
  });
});

it('finds the smallest number of days within which a share arrives', () => {
  const distribution = { days: [3, 5, 8], weights: [0.2, 0.5, 0.3] };
  expect([0.1, 0.2, 0.21, 0.7, 0.71, 1].map((share) => daysWithin(distribution, share))).toEqual([
    3, 3, 5, 5, 8, 8,
  ]);
});

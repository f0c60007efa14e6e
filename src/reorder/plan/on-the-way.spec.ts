import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrivalOfOrder } from './on-the-way.js';

const usual = { days: [5, 7, 10], weights: [0.5, 0.25, 0.25] };

describe('an order on its way', () => {
  it('arrives as such orders do, given that it has not come yet', () => {
    expect(arrivalOfOrder({ sentOn: -6, expectedOn: null }, usual)).toEqual({
      arrival: { days: [1, 4], weights: [0.5, 0.5] },
      overdue: false,
    });
  });

  it('arrives around the day that is said', () => {
    expect(arrivalOfOrder({ sentOn: -6, expectedOn: 8 }, usual).arrival.days).toEqual([8, 10, 13]);
  });

  it('is still counted on when it is later than any order was', () => {
    expect(arrivalOfOrder({ sentOn: -40, expectedOn: null }, usual)).toEqual({
      arrival: { days: [3], weights: [1] },
      overdue: true,
    });
    expect(
      arrivalOfOrder({ sentOn: -40, expectedOn: null }, { days: [0], weights: [1] }).arrival.days,
    ).toEqual([1]);
  });

  it('never arrives in the past, and its chances add up to 1', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -400, max: 0 }),
        fc.option(fc.integer({ min: -400, max: 400 })),
        fc.uniqueArray(fc.integer({ min: 0, max: 365 }), { minLength: 1, maxLength: 20 }),
        (sentOn, expectedOn, days) => {
          const sorted = [...days].sort((one, other) => one - other);
          const leadTime = { days: sorted, weights: sorted.map(() => 1 / sorted.length) };
          const { arrival } = arrivalOfOrder({ sentOn, expectedOn }, leadTime);
          expect(Math.min(...arrival.days)).toBeGreaterThanOrEqual(0);
          expect(arrival.weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});

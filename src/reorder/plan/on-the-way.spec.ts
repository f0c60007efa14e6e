import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrivalOfOrder, isDayByLeadTime } from './on-the-way.js';

const usual = { days: [5, 7, 10], weights: [0.5, 0.25, 0.25] };

describe('an order on its way', () => {
  it('arrives as such orders do, given that it has not come yet', () => {
    expect(arrivalOfOrder({ since: -6, saidOn: null }, usual)).toEqual({
      arrival: { days: [1, 4], weights: [0.5, 0.5] },
      overdue: false,
    });
  });

  it('arrives around the day that a person wrote', () => {
    expect(arrivalOfOrder({ since: -6, saidOn: 8 }, usual).arrival?.days).toEqual([8, 10, 13]);
  });

  it('is still counted on for a while when it is later than any order was, and then not any more', () => {
    expect(arrivalOfOrder({ since: -20, saidOn: null }, usual)).toEqual({
      arrival: { days: [3], weights: [1] },
      overdue: true,
    });
    expect(arrivalOfOrder({ since: -21, saidOn: null }, usual)).toEqual({ arrival: null, overdue: true });
    const atOnce = { days: [0], weights: [1] };
    expect(arrivalOfOrder({ since: -14, saidOn: null }, atOnce).arrival?.days).toEqual([1]);
    expect(arrivalOfOrder({ since: -15, saidOn: null }, atOnce).arrival).toBeNull();
  });

  it('is waited for by the day that a person wrote, however long ago it was sent', () => {
    expect(arrivalOfOrder({ since: -200, saidOn: 3 }, usual).arrival?.days).toEqual([3, 5, 8]);
    expect(arrivalOfOrder({ since: -200, saidOn: -100 }, usual).arrival).toBeNull();
  });

  it('has a day by lead time when it is the one within which four of five are here', () => {
    expect(isDayByLeadTime(-6, 4, [{ days: [1], weights: [1] }, usual])).toBe(true);
    expect(isDayByLeadTime(-6, 3, [usual])).toBe(false);
  });

  it('never arrives in the past, and its chances add up to 1', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -400, max: 0 }),
        fc.option(fc.integer({ min: -400, max: 400 })),
        fc.uniqueArray(fc.integer({ min: 0, max: 365 }), { minLength: 1, maxLength: 20 }),
        (since, saidOn, days) => {
          const sorted = [...days].sort((one, other) => one - other);
          const leadTime = { days: sorted, weights: sorted.map(() => 1 / sorted.length) };
          const { arrival } = arrivalOfOrder({ since, saidOn }, leadTime);
          if (arrival === null) return;
          expect(Math.min(...arrival.days)).toBeGreaterThanOrEqual(0);
          expect(arrival.weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});

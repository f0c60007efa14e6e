import { expect, it } from 'vitest';
import { daysQuantile, meanDays } from './chances-of-days.js';

const leadTime = { days: [8, 3, 5], weights: [0.3, 0.2, 0.5] };

it('finds the days that are enough with a chance, whatever the order they are given in', () => {
  expect([0, 0.2, 0.21, 0.7, 0.71, 1].map((chance) => daysQuantile(leadTime, chance))).toEqual([
    3, 3, 5, 5, 8, 8,
  ]);
});

it('takes the mean by weight', () => {
  expect(meanDays(leadTime)).toBeCloseTo(5.5, 12);
});

it('is zero days when nothing is known', () => {
  expect(daysQuantile({ days: [], weights: [] }, 0.95)).toBe(0);
  expect(meanDays({ days: [], weights: [] })).toBe(0);
});

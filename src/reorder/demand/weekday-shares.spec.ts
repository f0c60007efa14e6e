import { describe, expect, it } from 'vitest';
import { weekdayIndex, weekdayShares } from './weekday-shares.js';

describe('the shares of weekdays', () => {
  it('are 0 on days nobody ever worked', () => {
    // The plan is made on a Wednesday; sessions were on Tuesdays and Fridays.
    const days = Array.from({ length: 20 }, (_, week) => [-1 - 7 * week, -5 - 7 * week]).flat();
    expect(weekdayShares(days, 3)).toEqual([0, 0.5, 0, 0, 0.5, 0, 0]);
  });

  it('are not told by a few sessions', () => {
    expect(weekdayShares([-1, -2], 3)).toBeNull();
  });

  it('know the weekday of any day', () => {
    expect([0, 1, 4, 5, -2, -3].map((day) => weekdayIndex(3, day))).toEqual([2, 3, 6, 0, 0, 6]);
  });
});

import { describe, expect, it } from 'vitest';
import { isLongInTransit, longestTransitDays } from './long-transit.js';

describe('goods on their way', () => {
  it('are missed the day after the longest time they may take', () => {
    expect(longestTransitDays).toBe(14);
    expect(isLongInTransit('2026-03-01', '2026-03-15')).toBe(false);
    expect(isLongInTransit('2026-03-01', '2026-03-16')).toBe(true);
  });

  it('are not missed when they were sent only tomorrow, by another clock', () => {
    expect(isLongInTransit('2026-03-02', '2026-03-01')).toBe(false);
  });
});

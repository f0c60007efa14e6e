import { describe, expect, it } from 'vitest';
import { channelLimits } from './channel-limits.js';

describe('the limits of the channels', () => {
  it('bound what waits and what is sent at once in each, and what goes out in a second', () => {
    const { log, ...outward } = channelLimits(50);
    expect(log.perSecond).toBeNull();
    for (const { atOnce, ...limits } of Object.values(outward)) {
      expect(limits).toEqual({ perSecond: 50, waiting: 1_000 });
      expect(atOnce).toBeLessThanOrEqual(50);
    }
  });
});

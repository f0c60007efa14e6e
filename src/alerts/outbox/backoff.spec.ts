import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import {
  type AfterFailure,
  afterFailure,
  beyondAnyWait,
  deliveryBackoff,
  deliveryLease,
  leaseEnd,
} from './backoff.js';

const failedAt = '2026-03-01T09:30:00.000Z';
const limits = { maximumAttempts: 6, firstWaitSeconds: 10, longestWaitSeconds: 60 };

function waitSeconds(after: AfterFailure): number {
  if (after.state !== 'pending') throw new Error('given up');
  return Temporal.Instant.from(failedAt).until(after.nextAttemptAt).total('seconds');
}

describe('afterFailure', () => {
  it('waits twice as long after each failure, up to the longest wait', () => {
    const longest = [1, 2, 3, 4, 5].map((attempts) =>
      Math.round(waitSeconds(afterFailure(attempts, failedAt, 0.999_999, limits))),
    );
    expect(longest).toEqual([10, 20, 40, 60, 60]);
  });

  it('never waits less than half of that, however the draw falls', () => {
    expect(waitSeconds(afterFailure(3, failedAt, 0, limits))).toBe(20);
  });

  it('gives up, visibly, after the last attempt', () => {
    expect(afterFailure(6, failedAt, 0.5, limits)).toEqual({ state: 'undeliverable' });
    expect(afterFailure(5, failedAt, 0.5, limits).state).toBe('pending');
  });

  it('writes instants as they are stored, with milliseconds', () => {
    expect(afterFailure(1, failedAt, 0, limits)).toEqual({
      state: 'pending',
      nextAttemptAt: '2026-03-01T09:30:05.000Z',
    });
  });

  it('gives up at once what would end the same', () => {
    expect(afterFailure(1, failedAt, 0.5, limits, { isLasting: true, retryAt: null })).toEqual({
      state: 'undeliverable',
    });
  });

  it.each([
    ['is waited for', '2026-03-01T09:31:00Z', '2026-03-01T09:31:00.000Z'],
    ['shortens no wait', '2026-03-01T09:30:01Z', '2026-03-01T09:30:05.000Z'],
    ['that is past shortens no wait', '2020-01-01T00:00:00Z', '2026-03-01T09:30:05.000Z'],
    ['beyond a day is a day', '2027-01-01T00:00:00Z', '2026-03-02T09:30:00.000Z'],
  ])('what the receiver asks for %s', (_, retryAt, nextAttemptAt) => {
    expect(afterFailure(1, failedAt, 0, limits, { isLasting: false, retryAt })).toEqual({
      state: 'pending',
      nextAttemptAt,
    });
  });

  it('always comes to an end, and within two days', () => {
    const draw = fc.double({ min: 0, max: 0.999, noNaN: true });
    fc.assert(
      fc.property(fc.array(draw, { minLength: 40, maxLength: 40 }), (draws) => {
        let seconds = 0;
        let attempts = 0;
        for (const each of draws) {
          attempts += 1;
          const after = afterFailure(attempts, failedAt, each);
          if (after.state === 'undeliverable') break;
          seconds += waitSeconds(after);
        }
        expect(attempts).toBe(deliveryBackoff.maximumAttempts);
        expect(seconds).toBeLessThan(48 * 3600);
      }),
    );
  });
});

describe('the lease of an attempt', () => {
  const seconds = (cutOff: number) =>
    Temporal.Instant.from(failedAt).until(leaseEnd(failedAt, cutOff)).total('seconds');

  it('is longer than the longest send, so that no attempt is begun beside itself', () => {
    expect(seconds(0)).toBe(150);
    expect(seconds(0)).toBeGreaterThan(deliveryLease.longestSendSeconds);
  });

  it('is longer each time one was cut off, up to an hour', () => {
    expect([1, 2, 3, 4, 5, 1_000].map(seconds)).toEqual([300, 600, 1_200, 2_400, 3_600, 3_600]);
  });
});

describe('beyond any wait', () => {
  it('lies no failed attempt and no lease', () => {
    const beyond = beyondAnyWait(failedAt);
    const failure = { isLasting: false, retryAt: '2030-01-01T00:00:00Z' };
    const after = afterFailure(29, failedAt, 0.999, deliveryBackoff, failure);
    expect(after.state === 'pending' && after.nextAttemptAt < beyond).toBe(true);
    expect(leaseEnd(failedAt, 1_000) < beyond).toBe(true);
  });
});

import { describe, expect, it } from 'vitest';
import {
  afterOutcome,
  isFailing,
  newSource,
  type SourceOutcome,
  type SourceState,
  sourceBackoff,
} from './source-state.js';

const now = '2026-11-26T06:00:00.000Z';
const tomorrow = '2026-11-27T06:00:00.000Z';
const read: SourceState = { ...newSource(now), etag: '"a"', lastModified: 'x', triedAt: now, readAt: now };
const failed = (more: Partial<Extract<SourceOutcome, { kind: 'failed' }>> = {}): SourceOutcome => ({
  kind: 'failed',
  error: 'It answered 503.',
  isLasting: false,
  retryAt: null,
  ...more,
});
const seconds = (state: SourceState) => (Date.parse(state.nextAttemptAt) - Date.parse(now)) / 1_000;

describe('a source', () => {
  it('is asked at once, and a day after it was read', () => {
    expect(newSource(now).nextAttemptAt).toBe(now);
    const state = afterOutcome(newSource(now), { kind: 'read', etag: '"a"', lastModified: 'x' }, now, 0);
    expect(state).toEqual({ ...read, nextAttemptAt: tomorrow });
  });

  it('that has nothing new keeps the name of its version', () => {
    expect(afterOutcome(read, { kind: 'unchanged' }, now, 0)).toEqual({ ...read, nextAttemptAt: tomorrow });
  });

  it('that fails for a time is asked again ever later, then once a day, and only then said to be failing', () => {
    let state = read;
    const waits: number[] = [];
    for (let attempt = 1; attempt <= sourceBackoff.maximumAttempts + 1; attempt += 1) {
      expect(isFailing(state)).toBe(attempt > sourceBackoff.maximumAttempts);
      state = afterOutcome(state, failed(), now, 0.999_999);
      waits.push(Math.round(seconds(state)));
    }
    expect(waits).toEqual([300, 600, 1_200, 2_400, 3_600, 86_400, 86_400]);
    expect(state).toMatchObject({ etag: '"a"', readAt: now, lastError: 'It answered 503.', failures: 7 });
    expect(isFailing(state)).toBe(true);
    expect(isFailing(afterOutcome(state, { kind: 'unchanged' }, now, 0))).toBe(false);
  });

  it('that will not mend by itself is failing at once, and asked again a day later', () => {
    const state = afterOutcome(read, failed({ isLasting: true }), now, 0);
    expect([isFailing(state), seconds(state)]).toEqual([true, 86_400]);
    expect(afterOutcome(state, failed({ isLasting: true }), now, 0).failures).toBe(state.failures + 1);
  });

  it('that asks us to come back later is left alone until then', () => {
    const retryAt = '2026-11-28T00:00:00.000Z';
    expect(afterOutcome(read, failed({ retryAt }), now, 0).nextAttemptAt).toBe(retryAt);
    expect(isFailing(afterOutcome(read, failed({ retryAt }), now, 0))).toBe(false);
  });
});

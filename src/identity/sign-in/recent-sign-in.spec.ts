import { describe, expect, it } from 'vitest';
import { isRecent } from './recent-sign-in.js';

describe('a sign-in', () => {
  it.each([
    ['2026-03-01T09:30:00.000Z', true],
    ['2026-03-01T09:39:59.999Z', true],
    ['2026-03-01T09:40:00.000Z', true],
    ['2026-03-01T09:40:00.001Z', false],
    ['2026-03-02T09:30:00.000Z', false],
  ])('of 09:30 is recent at %s: %s', (now, recent) => {
    expect(isRecent('2026-03-01T09:30:00.000Z', now)).toBe(recent);
  });
});

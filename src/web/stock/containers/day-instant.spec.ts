import { expect, it } from 'vitest';
import { dayInstant } from './day-instant.js';

const now = '2026-11-26T08:00:00.000Z';

it('is noon of a day gone by, where the studio is', () => {
  expect(dayInstant('2026-11-20', 'Europe/Vienna', now)).toBe('2026-11-20T11:00:00.000Z');
  expect(dayInstant('2026-07-20', 'Europe/Vienna', now)).toBe('2026-07-20T10:00:00.000Z');
});

it('is now on a day whose noon has not come, and noon after it', () => {
  expect(dayInstant('2026-11-26', 'Europe/Vienna', now)).toBe(now);
  expect(dayInstant('2026-11-26', 'Pacific/Auckland', now)).toBe('2026-11-25T23:00:00.000Z');
});

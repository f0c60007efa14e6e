import { expect, it } from 'vitest';
import { isPlanHeld, planLeaseEnd } from './plan-lease.js';

const now = '2026-03-02T23:59:00.000Z';

it('lets a plan belong to whoever makes it for a minute and a half', () => {
  expect(planLeaseEnd(now)).toBe('2026-03-03T00:00:30.000Z');
  expect(isPlanHeld(planLeaseEnd(now), now)).toBe(true);
  expect(isPlanHeld(planLeaseEnd(now), '2026-03-03T00:00:29.999Z')).toBe(true);
  expect(isPlanHeld(planLeaseEnd(now), '2026-03-03T00:00:30.000Z')).toBe(false);
  expect(isPlanHeld(null, now)).toBe(false);
});

it('takes no word of a clock that runs ahead by more than a lease', () => {
  expect(isPlanHeld('2026-03-03T00:02:00.000Z', now)).toBe(true);
  expect(isPlanHeld('2026-03-03T00:02:00.001Z', now)).toBe(false);
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { waitBeforeRetry } from './wait-before-retry.js';

it('waits at first half a second to a second, then twice as long each time', () => {
  expect([1, 2, 3, 4].map((failures) => waitBeforeRetry('lost', failures, 0))).toEqual([
    500, 1_000, 2_000, 4_000,
  ]);
  expect(waitBeforeRetry('lost', 1, 1)).toBe(1_000);
});

it('never waits longer than a minute, nor shorter than half a second', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 100_000 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (n, chance) => {
        const wait = waitBeforeRetry('lost', n, chance);
        expect(wait).toBeGreaterThanOrEqual(500);
        expect(wait).toBeLessThanOrEqual(60_000);
      },
    ),
  );
});

it('waits for minutes where it was refused', () => {
  expect([1, 2, 3, 40].map((failures) => waitBeforeRetry('refused', failures, 1))).toEqual([
    60_000, 120_000, 240_000, 600_000,
  ]);
});

import { expect, it } from 'vitest';
import { writtenDuration } from './written-duration.js';

it.each([
  [-3, '0:00'],
  [0, '0:00'],
  [59.9, '0:59'],
  [245, '4:05'],
  [3845, '1:04:05'],
  [90_000, '25:00:00'],
])('writes %d seconds as %s', (seconds, written) => {
  expect(writtenDuration(seconds)).toBe(written);
});

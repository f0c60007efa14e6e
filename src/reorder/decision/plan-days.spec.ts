import { expect, it } from 'vitest';
import { dateOfDay, dayOfDate } from './plan-days.js';

it('counts local days over a change of the clock and the end of a leap February', () => {
  expect(dateOfDay('2026-03-28', 2)).toBe('2026-03-30');
  expect(dateOfDay('2028-02-28', 1)).toBe('2028-02-29');
  expect(dayOfDate('2026-10-24', '2026-10-26')).toBe(2);
  expect(dayOfDate('2026-10-26', '2026-10-24')).toBe(-2);
});

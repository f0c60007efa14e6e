import { expect, it } from 'vitest';
import { daysToPutOff } from './days-to-put-off.js';

it.each([
  ['2026-11-26', '2026-11-27', '2027-11-26'],
  ['2026-12-31', '2027-01-01', '2027-12-31'],
  ['2028-02-29', '2028-03-01', '2029-02-28'],
])('on %s lets an alert be put off until %s at the earliest, and %s at the latest', (today, first, last) => {
  expect(daysToPutOff(today)).toEqual({ first, last });
});

import { expect, it } from 'vitest';
import { type DayOfOrder, saidDay } from './said-day.js';

/** By it, 80 % of orders of six days ago are here on day 4. */
const leadTime = { days: [10], weights: [1] };
const order: DayOfOrder = {
  expectedOn: 4,
  daySaid: null,
  dayChanged: 0,
  sentAs: 'by hand',
  saidInMail: null,
};
const dayOf = (changes: Partial<DayOfOrder>) => saidDay({ ...order, ...changes }, [-6, -2], [leadTime]);

it('is what was noted, also where the lead time gives the same day', () => {
  expect(dayOf({ daySaid: 1 })).toBe(4);
  expect(dayOf({ daySaid: 0, expectedOn: 5 })).toBe(null);
  expect(dayOf({ daySaid: 0, sentAs: 'mail', saidInMail: 2 })).toBe(null);
  expect(dayOf({ daySaid: 1, sentAs: 'mail', saidInMail: 2 })).toBe(4);
});

it('is the day of the mail while nothing is expected', () => {
  expect(dayOf({ expectedOn: null, sentAs: null, saidInMail: 7 })).toBe(7);
  expect(dayOf({ expectedOn: null, sentAs: null })).toBe(null);
});

it('is guessed where nobody noted it: a day that no lead time gives, or one that was changed', () => {
  expect(dayOf({})).toBe(null);
  expect(dayOf({ expectedOn: 8 })).toBe(null);
  expect(dayOf({ expectedOn: 5 })).toBe(5);
  expect(dayOf({ dayChanged: 1 })).toBe(4);
  expect(dayOf({ sentAs: 'mail', saidInMail: 6, expectedOn: 6 })).toBe(6);
  expect(dayOf({ sentAs: 'mail', expectedOn: 6 })).toBe(null);
});

import { DateTime } from 'luxon';
import { expect, it } from 'vitest';
import { leavingDayFault, MOST_DAYS_AHEAD, MOST_DAYS_PAST } from './leaving-day.js';

const today = '2026-06-15';
const inDays = (days: number) => DateTime.fromISO(today, { zone: 'utc' }).plus({ days }).toISODate() ?? '';

it.each([0, 1, -1, MOST_DAYS_AHEAD, -MOST_DAYS_PAST])('accepts a day %i days from today', (days) => {
  expect(leavingDayFault(inDays(days), today)).toBeNull();
});

it.each([MOST_DAYS_AHEAD + 1, -MOST_DAYS_PAST - 1])('takes a day %i days from today for a slip', (days) => {
  expect(leavingDayFault(inDays(days), today)).toContain('check the year');
});

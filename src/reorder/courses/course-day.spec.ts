import { DateTime } from 'luxon';
import { expect, it } from 'vitest';
import { courseDayFault, MOST_DAYS_AHEAD } from './course-day.js';

const today = '2026-06-15';
const inDays = (days: number) => DateTime.fromISO(today, { zone: 'utc' }).plus({ days }).toISODate() ?? '';

it.each([0, 1, MOST_DAYS_AHEAD])('accepts a course in %i days', (days) => {
  expect(courseDayFault(inDays(days), today)).toBeNull();
});

it('refuses a day that is over, and one too far ahead', () => {
  expect(courseDayFault(inDays(-1), today)).toBe(
    '2026-06-14 is over, today is 2026-06-15; a course is planned for today or a later day',
  );
  expect(courseDayFault(inDays(MOST_DAYS_AHEAD + 1), today)).toContain('check the year');
});

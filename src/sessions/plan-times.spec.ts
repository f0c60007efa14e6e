import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { bookedTime, plannedTime } from './plan-times.js';

const now = '2026-03-10T10:00:00.000Z';
const daysFromNow = (days: number) => Temporal.Instant.from(now).add({ hours: 24 * days });

describe('when a session was booked', () => {
  it('is any instant up to now, told in UTC', () => {
    expect(bookedTime('2019-07-01T09:30+02:00', now)).toEqual({ instant: '2019-07-01T07:30:00.000Z' });
    expect(bookedTime(now, now)).toEqual({ instant: now });
  });

  it('is not in the future, not even by a millisecond', () => {
    expect(bookedTime('2026-03-10T10:00:00.001Z', now)).toEqual({
      error: 'bookedAt 2026-03-10T10:00:00.001Z lies in the future. Check the date.',
    });
  });
});

describe('when a session is to start', () => {
  it.each([-31, 0, 1500])('may lie %i days from now', (days) => {
    const planned = daysFromNow(days);
    expect(plannedTime(planned.toString(), now)).toEqual({
      instant: planned.toString({ fractionalSecondDigits: 3 }),
    });
  });

  it.each([
    [-1, -31, 'more than 31 days back. What took place already goes in as a late record.'],
    [1, 1500, 'more than 1500 days ahead. Check the year.'],
  ])('may not lie %i millisecond beyond %i days from now', (milliseconds, days, words) => {
    const planned = plannedTime(daysFromNow(days).add({ milliseconds }).toString(), now);
    expect('error' in planned && planned.error).toContain(words);
  });
});

describe('a time that is none', () => {
  // A date without time passes as ISO 8601 but names no instant.
  it.each(['2026-03-01', '2026-03-01T09:30', 'soon'])('is refused with how to write it: %s', (given) => {
    for (const time of [bookedTime(given, now), plannedTime(given, now)]) {
      expect('error' in time && time.error).toContain(`"${given}" is not an instant`);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { instantsOfDays } from './day-range.js';

describe('the instants of local days', () => {
  it('begin and end at local midnight', () => {
    expect(instantsOfDays('2026-01-10', '2026-01-10', 'Europe/Vienna')).toEqual({
      from: '2026-01-09T23:00:00.000Z',
      before: '2026-01-10T23:00:00.000Z',
    });
  });

  it('hold 23 hours on the day on which summer time begins, 25 on which it ends', () => {
    expect(instantsOfDays('2026-03-29', '2026-03-29', 'Europe/Vienna')).toEqual({
      from: '2026-03-28T23:00:00.000Z',
      before: '2026-03-29T22:00:00.000Z',
    });
    expect(instantsOfDays('2026-10-25', '2026-10-25', 'Europe/Vienna')).toEqual({
      from: '2026-10-24T22:00:00.000Z',
      before: '2026-10-25T23:00:00.000Z',
    });
  });

  it('hold both ends of a range', () => {
    expect(instantsOfDays('2026-02-28', '2026-03-01', 'America/New_York')).toEqual({
      from: '2026-02-28T05:00:00.000Z',
      before: '2026-03-02T05:00:00.000Z',
    });
  });

  it('end with the last four-digit year, since later ones sort below all others as text', () => {
    for (const timeZone of ['Europe/Vienna', 'America/New_York', 'UTC']) {
      const range = instantsOfDays('1900-01-01', '9999-12-31', timeZone);
      expect(range?.before).toMatch(/^9999-12-31T/);
      expect((range?.from ?? '') < (range?.before ?? '')).toBe(true);
    }
  });

  it.each(['2026-02-29', '2026-13-01', '2026-00-10', '20260101', '2026-01-01T00:00', ''])(
    'do not exist for %s',
    (day) => {
      expect(instantsOfDays(day, '2027-01-01', 'Europe/Vienna')).toBeNull();
      expect(instantsOfDays('2020-01-01', day, 'Europe/Vienna')).toBeNull();
    },
  );

  it('do not exist for a range that runs backwards', () => {
    expect(instantsOfDays('2026-01-02', '2026-01-01', 'Europe/Vienna')).toBeNull();
  });
});

import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { fullYear, printDate, readDate, readDateWithCentury } from './gs1-date.js';

describe('the century of a two-digit year', () => {
  // GS1 General Specifications 7.12 [P]: difference 51 and more is last century, -50 and less the next.
  it.each([
    [2026, 76, 2076],
    [2026, 77, 1977],
    [2026, 26, 2026],
    [2026, 0, 2000],
    [2051, 0, 2100],
    [2051, 1, 2101],
    [2051, 2, 2002],
    [2099, 49, 2149],
    [2099, 50, 2050],
    [2000, 50, 2050],
    [2000, 51, 1951],
  ])('read in %i, %i is %i', (thisYear, twoDigits, expected) => {
    expect(fullYear(twoDigits, thisYear)).toBe(expected);
  });

  it('always lies from 49 years back to 50 ahead', () => {
    for (let thisYear = 1990; thisYear < 2110; thisYear++) {
      for (let twoDigits = 0; twoDigits < 100; twoDigits++) {
        const ahead = fullYear(twoDigits, thisYear) - thisYear;
        expect(ahead).toBeGreaterThanOrEqual(-49);
        expect(ahead).toBeLessThanOrEqual(50);
      }
    }
  });
});

describe('a date of six digits', () => {
  // GS1 General Specifications 3.4.5 [S].
  it.each([
    ['130200', '2013-02-28'],
    ['160200', '2016-02-29'],
    ['261200', '2026-12-31'],
  ])('%s is the end of the month, %s', (digits, date) => {
    expect(readDate(digits, 2026, 'month end')).toEqual({ ok: true, date, precision: 'month' });
  });

  it('states a day when it has one', () => {
    expect(readDate('280229', 2026, 'month end')).toEqual({
      ok: true,
      date: '2028-02-29',
      precision: 'day',
    });
  });

  it.each([
    ['260229', 'a day 01 to 28, or 00 for the end of the month', 4],
    ['260431', 'a day 01 to 30, or 00 for the end of the month', 4],
    ['261301', 'a month 01 to 12', 2],
    ['260001', 'a month 01 to 12', 2],
    ['260000', 'a month 01 to 12', 2],
    ['2601', 'six digits, YYMMDD', 0],
    ['26O101', 'six digits, YYMMDD', 0],
  ])('refuses %s, which is not in the calendar', (digits, allowed, offset) => {
    expect(readDate(digits, 2026, 'month end')).toMatchObject({ ok: false, allowed, offset });
  });

  it('refuses the day 00 where a month is not enough', () => {
    expect(readDate('260200', 2026, 'refused')).toMatchObject({ ok: false, allowed: 'a day 01 to 28' });
  });

  it('lets the year of reading decide whether 29 February 00 exists', () => {
    expect(readDate('000229', 2026, 'refused').ok).toBe(true);
    expect(readDate('000229', 2060, 'refused').ok).toBe(false);
  });

  it('reads back what was printed, for every day of a hundred years', () => {
    let day = Temporal.PlainDate.from('1977-01-01');
    while (day.year <= 2076) {
      const stated = { date: day.toString(), precision: 'day' as const };
      const printed = printDate(stated, 2026) ?? '';
      expect(readDate(printed, 2026, 'month end')).toEqual({ ok: true, ...stated });
      day = day.add({ days: 1 });
    }
  });

  it('is not printed for a year that would read back as another', () => {
    expect(printDate({ date: '2076-05-31', precision: 'month' }, 2026)).toBe('760500');
    expect(printDate({ date: '2077-05-31', precision: 'month' }, 2026)).toBeUndefined();
  });
});

describe('a date of eight digits', () => {
  it('has its own century and always a day', () => {
    expect(readDateWithCentury('19000228')).toMatchObject({ ok: true, date: '1900-02-28' });
    expect(readDateWithCentury('19000229').ok).toBe(false);
    expect(readDateWithCentury('20260200').ok).toBe(false);
    expect(readDateWithCentury('2026021').ok).toBe(false);
  });
});

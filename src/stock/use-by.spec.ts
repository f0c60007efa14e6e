import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { readUseBy } from './use-by.js';

function errorCode(text: string): string | null {
  const reading = readUseBy(text);
  return 'error' in reading ? reading.error.code : null;
}

describe('a use-by date', () => {
  // ISO 15223-1:2021, 5.1.4 [S]: usable through the end of the year, month or day shown.
  it('of a day is that day', () => {
    expect(readUseBy('2027-05-09')).toEqual({ lastDay: '2027-05-09', precision: 'day' });
  });

  it('of a month is the last day of the month', () => {
    expect(readUseBy('2027-04')).toEqual({ lastDay: '2027-04-30', precision: 'month' });
    expect(readUseBy('2027-12')).toEqual({ lastDay: '2027-12-31', precision: 'month' });
  });

  it('of a year is 31 December', () => {
    expect(readUseBy('2027')).toEqual({ lastDay: '2027-12-31', precision: 'year' });
  });

  it('of a February ends on the 29th in leap years only', () => {
    // The same month ends as GS1 General Specifications 3.4.5 [S] gives for 130200 and 160200.
    expect(readUseBy('2013-02')).toEqual({ lastDay: '2013-02-28', precision: 'month' });
    expect(readUseBy('2016-02')).toEqual({ lastDay: '2016-02-29', precision: 'month' });
    expect(readUseBy('2100-02')).toEqual({ lastDay: '2100-02-28', precision: 'month' });
    expect(readUseBy('2000-02')).toEqual({ lastDay: '2000-02-29', precision: 'month' });
  });

  it('may have spaces around it', () => {
    expect(readUseBy(' 2027-04 ')).toEqual({ lastDay: '2027-04-30', precision: 'month' });
  });

  it.each(['2026-02-30', '2027-02-29', '2026-04-31', '2026-13', '2026-13-01', '2026-00', '2026-05-00'])(
    'refuses %s, which is not in the calendar',
    (text) => {
      expect(errorCode(text)).toBe('use-by does not exist');
    },
  );

  it.each(['', '27-05-09', '09.05.2027', '05/2027', '2027-5-9', '20270509', '2027-05-09T00:00:00Z', '٢٠٢٧'])(
    'refuses %j, which could be read in more than one way or not at all',
    (text) => {
      expect(errorCode(text)).toBe('use-by not a date');
    },
  );

  it.each(['0227-05-09', '1899', '2200-01', '2926'])(
    'refuses the year of %s as a slip of the pen',
    (text) => {
      expect(errorCode(text)).toBe('use-by year out of range');
    },
  );

  it('says what was seen, what is allowed and what to do', () => {
    const reading = readUseBy('2026-02-30');
    expect('error' in reading && reading.error.message).toMatch(
      /2026-02-30.*YYYY-MM-DD.*Compare with the label/,
    );
  });

  it('keeps an over-long text out of the message', () => {
    const reading = readUseBy('9'.repeat(10_000));
    expect('error' in reading && reading.error.message.length).toBeLessThan(300);
  });

  it('is read back unchanged for every day of the allowed years', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 109_000 }), (days) => {
        const day = Temporal.PlainDate.from('1900-01-01').add({ days }).toString();
        expect(readUseBy(day)).toEqual({ lastDay: day, precision: 'day' });
      }),
    );
  });

  it('of a month is followed by the first of the next month', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1900, max: 2199 }), fc.integer({ min: 1, max: 12 }), (year, month) => {
        const reading = readUseBy(`${year}-${String(month).padStart(2, '0')}`);
        if ('error' in reading) throw new Error(reading.error.message);
        const next = Temporal.PlainDate.from(reading.lastDay).add({ days: 1 });
        expect(next.day).toBe(1);
        expect(next.month).toBe((month % 12) + 1);
      }),
    );
  });
});

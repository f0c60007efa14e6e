import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { otherOrderOfDate, readWrittenDay } from './written-day.js';

describe('a day in a file', () => {
  it('is taken year first', () => {
    expect(readWrittenDay('2026-04-03')).toEqual({ day: '2026-04-03' });
    expect(readWrittenDay('2028-02-29')).toEqual({ day: '2028-02-29' });
  });

  it('that may be April or March is a fault that names both', () => {
    const read = readWrittenDay('03/04/2026');
    expect(read).toEqual({
      fault: '03/04/2026 may be read in two ways; write 2026-04-03 or 2026-03-04, whichever is meant',
    });
    expect(readWrittenDay('3.4.26')).toMatchObject({ fault: expect.stringContaining('2026-04-03') });
  });

  it('that can be read in one way only is a fault that says how to write it', () => {
    expect(readWrittenDay('31.12.2026')).toEqual({ fault: '31.12.2026: write the year first, 2026-12-31' });
    expect(readWrittenDay('12/31/2026')).toEqual({ fault: '12/31/2026: write the year first, 2026-12-31' });
    expect(readWrittenDay('04/04/2026')).toEqual({ fault: '04/04/2026: write the year first, 2026-04-04' });
    expect(readWrittenDay('2026/4/3')).toEqual({ fault: '2026/4/3: write it as 2026-04-03' });
  });

  it('that does not exist is a fault', () => {
    for (const text of ['2026-02-29', '2026-13-01', '31/31/2026', '00.00.2026']) {
      expect(readWrittenDay(text)).toMatchObject({ fault: expect.stringContaining('calendar') });
    }
  });

  it('that a spreadsheet shows as its number is a fault that says so', () => {
    expect(readWrittenDay('46115')).toMatchObject({
      fault: expect.stringContaining('spreadsheet keeps a date'),
    });
  });

  it('may be a month where the label says only that, year first too', () => {
    expect(otherOrderOfDate('06/2027')).toBe('06/2027: write the year first, 2027-06');
    expect(otherOrderOfDate('13/2027')).toContain('not a month');
    expect(otherOrderOfDate('soon')).toBeNull();
  });

  it('reads every day of the calendar back, and nothing else', () => {
    fc.assert(
      fc.property(
        fc.date({ min: new Date('1900-01-01'), max: new Date('2199-12-31'), noInvalidDate: true }),
        (date) => {
          const day = date.toISOString().slice(0, 10);
          expect(readWrittenDay(day)).toEqual({ day });
        },
      ),
    );
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = readWrittenDay(text);
        expect('fault' in read || read.day === text).toBe(true);
      }),
    );
  });
});

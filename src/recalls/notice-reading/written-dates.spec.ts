import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tokensOf } from './tokens.js';
import { type DateOrder, dateAt, looksLikeDate, orderOf, widest } from './written-dates.js';

const read = (text: string, labelled = true, order: DateOrder = null) =>
  dateAt(tokensOf(text), 0, { thisYear: 2026, order, labelled });

describe('a written date', () => {
  // ISO 8601 and the names of months [C]; month-only dates are the whole month, leap years included.
  it.each([
    ['2027-10-31', '2027-10-31', '2027-10-31'],
    ['2028-02', '2028-02-01', '2028-02-29'],
    ['2027-10-00', '2027-10-01', '2027-10-31'],
    ['10/15', '2015-10-01', '2015-10-31'],
    ['15/10', '2015-10-01', '2015-10-31'],
    ['10/2015', '2015-10-01', '2015-10-31'],
    ['10 / 2015', '2015-10-01', '2015-10-31'],
    ['Oct 2015', '2015-10-01', '2015-10-31'],
    ['October 15, 2015', '2015-10-15', '2015-10-15'],
    ['15th of October 2015', '2015-10-15', '2015-10-15'],
    ['31. März 2027', '2027-03-31', '2027-03-31'],
    ['1er mars 2027', '2027-03-01', '2027-03-01'],
    ['31 de marzo de 2027', '2027-03-31', '2027-03-31'],
    ['31-Mar-2013', '2013-03-31', '2013-03-31'],
    ['07FEB2014', '2014-02-07', '2014-02-07'],
    ['OCT27', '2027-10-01', '2027-10-31'],
    ['31.12.27', '2027-12-31', '2027-12-31'],
    ['12/31/2027', '2027-12-31', '2027-12-31'],
    ['20271231', '2027-12-31', '2027-12-31'],
    ['2027', '2027-01-01', '2027-12-31'],
  ])('%s', (text, from, through) => {
    expect(read(text)?.readings).toEqual([{ from, through }]);
  });

  it('has both readings where day and month may be meant either way', () => {
    const readings = read('03/04/15')?.readings ?? [];
    expect(readings.map(({ from }) => from)).toEqual(['2015-04-03', '2015-03-04']);
    expect(widest(readings)).toEqual({ from: '2015-03-04', through: '2015-04-03' });
  });

  it('is read in the order that is known', () => {
    expect(read('03/04/15', true, 'day first')?.readings).toEqual([
      { from: '2015-04-03', through: '2015-04-03' },
    ]);
    expect(read('03/04/15', true, 'month first')?.readings).toEqual([
      { from: '2015-03-04', through: '2015-03-04' },
    ]);
  });

  it.each(['31/31/2015', '2015-13-01', '30/02/2015', '10.13.2O15', 'May', '1/2/3/4', '99999999999999999999'])(
    '%s is none',
    (text) => {
      expect(read(text)).toBeNull();
    },
  );

  it.each(['10/15', '1015', '151031', '2015', 'Oct 15'])('needs a word before it: %s', (text) => {
    expect(read(text, false)).toBeNull();
  });

  it('may lack its year', () => {
    expect(read('May 17')?.yearUnclear).toBe(true);
    expect(read("May '17")?.yearUnclear).toBeUndefined();
  });

  it('tells the order of the others when it leaves no choice', () => {
    expect(orderOf(tokensOf('6/7/12 and 5/31/12'))?.order).toBe('month first');
    expect(orderOf(tokensOf('31/5/12'))?.order).toBe('day first');
    expect(orderOf(tokensOf('31/5/12 and 5/31/12'))).toBeNull();
    // A lot may be written like a date.
    expect(orderOf(tokensOf('31.05.12'))).toBeNull();
  });

  it('is recognised in a code that looks like one', () => {
    expect(['12.03.15', '2015-10-31', '12.03'].map(looksLikeDate)).toEqual([true, true, false]);
  });

  it('never throws, and never ends before it begins', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[0-9A-Za-zé ./'-]{0,20}$/), fc.boolean(), (text, labelled) => {
        for (const { from, through } of read(text, labelled)?.readings ?? [])
          expect(from <= through).toBe(true);
      }),
      { numRuns: 2_000 },
    );
  });
});

import { describe, expect, it } from 'vitest';
import { readOpenedLife } from './opened-life-duration.js';

describe('an opened life', () => {
  it('is read in months, days or hours', () => {
    // Regulation (EC) 1223/2009, Annex VII [P]: the period after opening stands on the label as "12M".
    expect(readOpenedLife('P12M')).toEqual({ amount: 12, unit: 'months' });
    expect(readOpenedLife('P30D')).toEqual({ amount: 30, unit: 'days' });
    expect(readOpenedLife('PT48H')).toEqual({ amount: 48, unit: 'hours' });
  });

  it.each([
    ['P1M', 'P120M', 'P121M'],
    ['P1D', 'P3650D', 'P3651D'],
    ['PT1H', 'PT8760H', 'PT8761H'],
  ])('is believed from %s to %s and no further', (least, most, beyond) => {
    expect(readOpenedLife(least)).not.toHaveProperty('error');
    expect(readOpenedLife(most)).not.toHaveProperty('error');
    expect(readOpenedLife(beyond)).toHaveProperty('error.code', 'opened life out of range');
  });

  it.each([
    '',
    '12M',
    'P1Y',
    'P4W',
    'P1M3D',
    'P1DT2H',
    'PT30M',
    'P0D',
    'P012M',
    'P-3M',
    '-P3M',
    'P1.5M',
    'p12m',
    'P48H',
  ])('is not read from %j', (text) => {
    expect(readOpenedLife(text)).toHaveProperty('error.code', 'opened life not a duration');
  });

  it('tells how the label symbol is written', () => {
    const reading = readOpenedLife('12M');
    expect('error' in reading && reading.error.message).toContain('"12M" as P12M');
  });
});

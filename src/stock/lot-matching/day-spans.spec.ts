import { describe, expect, it } from 'vitest';
import { dayInSpan, useByInSpan } from './day-spans.js';

const october = { from: '2015-10-01', through: '2015-10-31' };

describe('a use-by date against the span that a notice names', () => {
  it.each([
    ['a day inside', '2015-10-15', 'day', october, 'inside'],
    ['the first day', '2015-10-01', 'day', october, 'inside'],
    ['the last day', '2015-10-31', 'day', october, 'inside'],
    ['the day before', '2015-09-30', 'day', october, 'outside'],
    ['the day after', '2015-11-01', 'day', october, 'outside'],
    ['the month', '2015-10-31', 'month', october, 'inside'],
    [
      'the month, of which only the last day is named',
      '2015-10-31',
      'month',
      { from: '2015-10-31', through: '2015-10-31' },
      'inside',
    ],
    [
      'the month, of which only an earlier day is named',
      '2015-10-31',
      'month',
      { from: '2015-10-05', through: '2015-10-05' },
      'overlaps',
    ],
    ['the month before', '2015-09-30', 'month', october, 'outside'],
    ['the month after', '2015-11-30', 'month', october, 'outside'],
    ['the year', '2015-12-31', 'year', october, 'overlaps'],
    ['the year before', '2014-12-31', 'year', october, 'outside'],
    ['the year after', '2016-12-31', 'year', october, 'outside'],
    ['none', null, 'none printed', october, 'unknown'],
    ['before an open beginning', '2001-01-01', 'day', { from: null, through: '2015-10-31' }, 'inside'],
    ['after an open end', '2040-01-01', 'day', { from: '2015-10-01', through: null }, 'inside'],
    [
      'a month that begins before an open end',
      '2015-11-30',
      'month',
      { from: null, through: '2015-11-01' },
      'overlaps',
    ],
  ] as const)('%s', (_, useBy, useByPrecision, span, expected) => {
    expect(useByInSpan(span, { useBy, useByPrecision })).toBe(expected);
  });
});

describe('a manufacture date against a span', () => {
  it('lies inside, outside or is not known', () => {
    expect(dayInSpan(october, '2015-10-31')).toBe('inside');
    expect(dayInSpan(october, '2015-11-01')).toBe('outside');
    expect(dayInSpan(october, null)).toBe('unknown');
  });
});

import { describe, expect, it } from 'vitest';
import { dateExpressionAt } from './date-expression.js';
import { tokensOf } from './tokens.js';

const spans = (text: string) => {
  const found = dateExpressionAt(tokensOf(text), 0, {
    thisYear: 2026,
    order: 'month first',
    isLabel: () => false,
  });
  return found?.spans.map(({ from, through }) => `${from ?? ''}/${through ?? ''}`) ?? null;
};

describe('dates behind a word', () => {
  it.each([
    ['from 01/19/2012 through 05/02/2012', ['2012-01-19/2012-05-02']],
    ['dates between 7/11/12 and 10/25/12', ['2012-07-11/2012-10-25']],
    ['7/11/12-10/25/12', ['2012-07-11/2012-10-25']],
    ['01/2013 \u2013 05/2014', ['2013-01-01/2014-05-31']],
    [
      '5/31/12, 6/7/12 & 6/14/12',
      ['2012-05-31/2012-05-31', '2012-06-07/2012-06-07', '2012-06-14/2012-06-14'],
    ],
    ['on or before 10/2015', ['/2015-10-31']],
    ['10/2015 or earlier', ['/2015-10-31']],
    ['after 10/2015', ['2015-10-01/']],
    ['10/2015 and later', ['2015-10-01/']],
    [': 10/15, 12345', ['2015-10-01/2015-10-31']],
    ['zwischen 10/2015 und 12/2015', ['2015-10-01/2015-12-31']],
    ['05/2014 to 01/2013', ['2013-01-01/2014-05-31']],
  ])('%s', (text, expected) => {
    expect(spans(text)).toEqual(expected);
  });

  it.each(['of the product is 10/2015', '', ', lot', ':\n\n10/2015'])(
    'are not sought beyond other words: %j',
    (text) => {
      expect(spans(text)).toBeNull();
    },
  );
});

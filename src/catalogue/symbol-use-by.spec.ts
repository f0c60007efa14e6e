import { describe, expect, it } from 'vitest';
import { symbolUseBy } from './symbol-use-by.js';

const useBy = { date: '2028-06-30', precision: 'month' } as const;
const day = (date: string) => ({ date, precision: 'day' }) as const;

describe('the last day of use in a symbol', () => {
  it('is its use-by date, as exactly as that is stated', () => {
    expect(symbolUseBy({ useBy })).toEqual(useBy);
  });

  it('is none when the symbol holds no date', () => {
    expect(symbolUseBy({})).toBeNull();
  });

  it('is the day after whose moment nothing may be used, when that is all there is', () => {
    expect(symbolUseBy({ useByMoment: { date: '2028-05-01' } })).toEqual(day('2028-05-01'));
  });

  it('is the earlier of use-by date and moment', () => {
    expect(symbolUseBy({ useBy, useByMoment: { date: '2028-05-01' } })).toEqual(day('2028-05-01'));
    expect(symbolUseBy({ useBy, useByMoment: { date: '2028-07-01' } })).toEqual(useBy);
  });

  it('is the best-before date only where there is no use-by date', () => {
    expect(symbolUseBy({ bestBefore: day('2028-03-31') })).toEqual(day('2028-03-31'));
    expect(symbolUseBy({ bestBefore: day('2028-03-31'), useBy })).toEqual(useBy);
  });

  it('is the earlier of best-before date and moment without a use-by date', () => {
    const bestBefore = day('2028-03-31');
    expect(symbolUseBy({ bestBefore, useByMoment: { date: '2028-03-30' } })).toEqual(day('2028-03-30'));
    expect(symbolUseBy({ bestBefore, useByMoment: { date: '2028-04-01' } })).toEqual(bestBefore);
  });
});

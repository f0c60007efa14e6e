import { describe, expect, it } from 'vitest';
import { type LotOnRecord, matchWrittenLot, sistersOf } from './written-lot-match.js';

const lot = (lotId: string, useBy: string | null, code = 'A7', productId = 'umber'): LotOnRecord => ({
  lotId,
  productId,
  code,
  useBy,
});
const written = (useBy: string | null, code: string | null = 'A7') => ({ productId: 'umber', code, useBy });

describe('the lot that a paper note names', () => {
  const march = lot('march', '2027-03-31');
  const june = lot('june', '2027-06-30');
  const undated = lot('undated', null);

  it('has the product, the code and the date written down', () => {
    expect(matchWrittenLot(written('2027-06-30'), [march, june, undated])).toBe('june');
    expect(matchWrittenLot(written('2027-06-30'), [lot('rose', '2027-06-30', 'A7', 'rose')])).toBeNull();
    expect(matchWrittenLot(written('2027-06-30'), [lot('other', '2027-06-30', 'A8')])).toBeNull();
  });

  it('is another one when the date differs', () => {
    expect(matchWrittenLot(written('2028-01-31'), [march])).toBeNull();
    expect(matchWrittenLot(written('2028-01-31'), [undated])).toBeNull();
  });

  it('is the one without a date, else the only one of the code, when no date was written down', () => {
    expect(matchWrittenLot(written(null), [march, undated])).toBe('undated');
    expect(matchWrittenLot(written(null), [march])).toBe('march');
    expect(matchWrittenLot(written(null), [march, march])).toBe('march');
    expect(matchWrittenLot(written(null), [march, june])).toBeNull();
  });

  it('is not known without a code', () => {
    expect(matchWrittenLot(written('2027-03-31', null), [march])).toBeNull();
    expect(matchWrittenLot(written(null), [])).toBeNull();
  });
});

describe('the sisters of a lot that a paper note names', () => {
  it('have the product and the code, but another date, and are each told once', () => {
    const [march, undated] = [lot('march', '2027-03-31'), lot('undated', null)];
    const recorded = [
      march,
      march,
      undated,
      lot('other', '2027-03-31', 'A8'),
      lot('rose', null, 'A7', 'rose'),
    ];
    expect(sistersOf(written('2027-06-30'), recorded)).toEqual([march, undated]);
    expect(sistersOf(written('2027-03-31'), recorded)).toEqual([undated]);
    expect(sistersOf(written('2027-06-30', null), recorded)).toEqual([]);
  });
});

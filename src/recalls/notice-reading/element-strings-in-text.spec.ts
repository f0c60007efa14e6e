import { describe, expect, it } from 'vitest';
import { elementStringOfWord, elementStringsIn } from './element-strings-in-text.js';

const today = '2026-11-26';

describe('element strings in a text', () => {
  it('are found with brackets, spaces and what follows them', () => {
    const text = 'Scan (01)09501101530003(17)271231(10)AB12; or (01) 09501101530003 (10) XY-7, please.';
    const found = elementStringsIn(text, today);
    expect(found.map(({ facts }) => [facts.gtin14, facts.lotCode, facts.useBy?.date])).toEqual([
      ['09501101530003', 'AB12', '2027-12-31'],
      ['09501101530003', 'XY-7', undefined],
    ]);
    expect(found.map(({ start, end }) => text.slice(start, end))).toEqual([
      '(01)09501101530003(17)271231(10)AB12',
      '(01) 09501101530003 (10) XY-7',
    ]);
  });

  it('keep their lot although the check digit is wrong, and say so', () => {
    const [found] = elementStringsIn('(01)09501101530004(10)AB12', today);
    expect(found?.facts.lotCode).toBe('AB12');
    expect(found?.fault?.code).toBe('check-digit');
  });

  it('are found as a scanner types them', () => {
    expect(elementStringOfWord('010950110153000317271231' + '10AB12', today)).toMatchObject({
      gtin14: '09501101530003',
      lotCode: 'AB12',
    });
    expect(elementStringOfWord('0109501101530004172712311', today)).toBeNull();
    expect(elementStringOfWord('01234567890123456789', today)).toBeNull();
  });
});

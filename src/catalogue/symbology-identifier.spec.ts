import { describe, expect, it } from 'vitest';
import { takeSymbologyIdentifier } from './symbology-identifier.js';

describe('a symbology identifier', () => {
  // GS1 General Specifications, symbology identifiers [P].
  it.each([
    [']C1', 'elements'],
    [']e0', 'elements'],
    [']d2', 'elements'],
    [']Q3', 'elements'],
    [']J1', 'elements'],
    [']E0', 'product number'],
    [']E4', 'product number'],
    [']I1', 'product number'],
    [']C0', 'anything'],
    [']d1', 'anything'],
    [']Q1', 'anything'],
    [']z9', 'anything'],
  ] as const)(
    '%s tells that the symbol holds %s, beside the text or in front of it',
    (identifier, content) => {
      const expected = { symbologyIdentifier: identifier, content, text: '01' };
      expect(takeSymbologyIdentifier(`${identifier}01`, undefined)).toEqual(expected);
      expect(takeSymbologyIdentifier('01', identifier)).toEqual(expected);
      expect(takeSymbologyIdentifier(`${identifier}01`, identifier)).toEqual(expected);
    },
  );

  it('beside the text counts more than one in front, which is taken off all the same', () => {
    expect(takeSymbologyIdentifier(']C0AB', ']d2')).toMatchObject({ symbologyIdentifier: ']d2', text: 'AB' });
  });

  it('of another shape is ignored', () => {
    for (const given of ['', 'd2', ']d', ']d22', 'QR']) {
      expect(takeSymbologyIdentifier('AB', given)).toEqual({
        symbologyIdentifier: undefined,
        content: 'said nothing',
        text: 'AB',
      });
    }
    expect(takeSymbologyIdentifier(']', undefined).text).toBe(']');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkCharacterPair, checkDigit, gtin14, hasValidCheckDigit } from './check-digit.js';

describe('the check digit', () => {
  // The first two are worked examples of GS1 [P], the third is a GTIN of its example range [M].
  it.each([
    ['629104150021', '3'],
    ['1234567890123', '1'],
    ['950600013435', '2'],
  ])('of %s is %s', (digits, expected) => {
    expect(checkDigit(digits)).toBe(expected);
    expect(hasValidCheckDigit(digits + expected)).toBe(true);
  });

  it('catches every single wrong digit', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...'0123456789'), minLength: 7, maxLength: 17 }),
        fc.nat(),
        fc.integer({ min: 1, max: 9 }),
        (body, place, added) => {
          const whole = body + checkDigit(body);
          const index = place % whole.length;
          const wrong = (Number(whole[index]) + added) % 10;
          const changed = whole.slice(0, index) + wrong + whole.slice(index + 1);
          expect(hasValidCheckDigit(whole)).toBe(true);
          expect(hasValidCheckDigit(changed)).toBe(false);
        },
      ),
    );
  });

  it.each(['', '3', '629104150021X', '６２９１０４１５００２１３', ' 6291041500213'])(
    'is not found in "%s"',
    (text) => {
      expect(hasValidCheckDigit(text)).toBe(false);
    },
  );
});

describe('a GTIN', () => {
  it.each([
    ['95012346', '00000095012346'],
    ['950600013439', '00950600013439'],
    ['9506000134352', '09506000134352'],
    ['09506000134352', '09506000134352'],
  ])('%s is filled to %s', (digits, expected) => {
    expect(gtin14(digits)).toBe(expected);
  });

  it('is refused with a wrong check digit or another length', () => {
    expect(gtin14('9506000134353')).toBeUndefined();
    expect(gtin14('629104150021')).toBeUndefined();
    expect(gtin14(`12345678${checkDigit('12345678')}`)).toBeUndefined();
  });
});

describe('the check character pair', () => {
  // An example of the dictionary's reference check [P].
  it('of 1987654Ad4X4bL5ttr2310c is 2K', () => {
    expect(checkCharacterPair('1987654Ad4X4bL5ttr2310c')).toBe('2K');
  });

  it('is undefined for characters outside set 82 and for more than 97 of them', () => {
    expect(checkCharacterPair('12 34')).toBeUndefined();
    expect(checkCharacterPair('1'.repeat(97))).toBeDefined();
    expect(checkCharacterPair('1'.repeat(98))).toBeUndefined();
  });
});

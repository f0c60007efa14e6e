import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inLatinLetters, lettersAsDigits } from './look-alikes.js';

const character = fc.oneof(fc.integer({ min: 0, max: 0xd7ff }), fc.integer({ min: 0xe000, max: 0x10ffff }));
const anyText = fc.array(character, { maxLength: 12 }).map((points) => String.fromCodePoint(...points));

describe('letters that look alike', () => {
  it('are written with as many characters as before', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(inLatinLetters(text)).toHaveLength(text.length);
        expect(lettersAsDigits(text)).toHaveLength(text.length);
      }),
    );
  });

  it('turn each listed letter into a Latin one', () => {
    const cyrillic = 'АВЕЅІЈКМНОРСТХУаеоорсухіјѕ';
    expect(inLatinLetters(cyrillic)).toBe('ABESIJKMHOPCTXYaeoopcyxijs');
    expect(inLatinLetters('ΑΒΕΖΗΙΚΜΝΟΡΤΥΧ')).toBe('ABEZHIKMNOPTYX');
    expect(inLatinLetters('Жщ ß ë 漢')).toBe('Жщ ß ë 漢');
  });

  it('turn letters into the digits they are taken for, and no others', () => {
    expect(lettersAsDigits('OILSBZG|')).toBe('01158261');
    expect(lettersAsDigits('ACDEFHJKMNPQRTUVWXY 0123456789-')).toBe('ACDEFHJKMNPQRTUVWXY 0123456789-');
  });
});

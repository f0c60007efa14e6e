import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareNames, makerWords, nameWords, withoutBeginning, withoutEnd } from './names.js';

const compare = (one: string, other: string) => compareNames(nameWords(one), nameWords(other));

const character = fc.oneof(fc.integer({ min: 0, max: 0xd7ff }), fc.integer({ min: 0xe000, max: 0x10ffff }));
const anyText = fc.array(character, { maxLength: 20 }).map((points) => String.fromCodePoint(...points));

describe('the words of a name', () => {
  it.each([
    ['Brow  Colour', ['brow', 'colour']],
    ['Crème Brûlée', ['creme', 'brulee']],
    ['Straße', ['strasse']],
    ['Søndergård & Ægir', ['sondergard', 'and', 'aegir']],
    ["O'Hara’s Ink", ['oharas', 'ink']],
    ['No. 3', ['no', '3']],
    ['Brow-Colour/Umber', ['brow', 'colour', 'umber']],
    ['\u0412row \u0421olour', ['brow', 'colour']],
    ['Ｂｒｏｗ', ['brow']],
    ['Brow\u200bColour', ['browcolour']],
    ['', []],
    [null, []],
  ])('of %j are %j', (name, words) => {
    expect(nameWords(name)).toEqual(words);
  });

  it.each([
    ['Nordlys Pigment Ltd', 'nordlys pigment'],
    ['Nordlys Pigment Ltd.', 'nordlys pigment'],
    ['Nordlys GmbH & Co. KG', 'nordlys'],
    ['Nordlys A/S', 'nordlys'],
    ['Nordlys S.A.', 'nordlys'],
    ['Nordlys, Inc.', 'nordlys'],
    ['Nordlys AB', 'nordlys'],
    ['Company', 'company'],
    ['A/S', 'a s'],
    ['Corporate Colours', 'corporate colours'],
    ['Limited Colours', 'limited colours'],
  ])('of the maker %s are %s', (name, words) => {
    expect(makerWords(name).join(' ')).toBe(words);
  });

  it('folded again are the same', () => {
    fc.assert(
      fc.property(anyText, (name) => {
        const words = nameWords(name);
        expect(nameWords(words.join(' '))).toEqual(words);
      }),
    );
  });
});

describe('two names', () => {
  it.each([
    ['Brow Colour', 'brow-colour', 'same'],
    ['Brow Colour', 'BrowColour', 'same'],
    ['Brow Colour', 'Brow Color', 'similar'],
    ['Brow Colour', 'Borw Colour', 'similar'],
    ['Brow Colour', 'Brow Colour Intense', 'similar'],
    ['Colour', 'Brow Colour', 'similar'],
    ['Intense Brow Color', 'Brow Colour', 'similar'],
    ['Intense Brow Ink', 'Brow Colour', 'different'],
    ['Colour Brow', 'Brow Colour', 'similar'],
    ['Brow Colour', 'Lip Colour', 'different'],
    ['Umber', 'Sand', 'different'],
    ['Umber 2', 'Umber 3', 'different'],
    ['Umber 12', 'Umber 21', 'different'],
    ['Umber 2', 'Umbre 2', 'similar'],
    ['Red', 'Rod', 'different'],
  ] as const)('%s and %s are %s', (one, other, expected) => {
    expect(compare(one, other)).toBe(expected);
    expect(compare(other, one)).toBe(expected);
  });

  it('are compared alike both ways', () => {
    const name = fc.array(fc.constantFrom('brow', 'borw', 'colour', 'color', 'umber', '2', '3'), {
      maxLength: 3,
    });
    fc.assert(
      fc.property(name, name, (one, other) => {
        expect(compareNames(one, other)).toBe(compareNames(other, one));
      }),
      { numRuns: 1_000 },
    );
  });

  it('of which one has no words share nothing', () => {
    expect(compareNames([], ['brow'])).toBe('different');
  });
});

describe('what stands before or behind a name', () => {
  it('is taken off where something is left', () => {
    expect(withoutBeginning(['nordlys', 'brow'], ['nordlys'])).toEqual(['brow']);
    expect(withoutBeginning(['nordlys'], ['nordlys'])).toEqual(['nordlys']);
    expect(withoutBeginning(['brow', 'nordlys'], ['nordlys'])).toEqual(['brow', 'nordlys']);
    expect(withoutBeginning(['brow'], [])).toEqual(['brow']);
    expect(withoutEnd(['brow', 'umber'], ['umber'])).toEqual(['brow']);
    expect(withoutEnd(['umber'], ['umber'])).toEqual(['umber']);
    expect(withoutEnd(['umber', 'brow'], ['umber'])).toEqual(['umber', 'brow']);
    expect(withoutEnd(['brow'], [])).toEqual(['brow']);
  });
});

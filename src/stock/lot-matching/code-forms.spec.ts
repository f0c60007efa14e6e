import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codeForms } from './code-forms.js';

const character = fc.oneof(fc.integer({ min: 0, max: 0xd7ff }), fc.integer({ min: 0xe000, max: 0x10ffff }));
const anyText = fc.array(character, { maxLength: 12 }).map((points) => String.fromCodePoint(...points));

describe('the forms of a lot code', () => {
  it.each([
    [' ab12 ', 'AB12', 'case and spaces around it'],
    ['AB\u200f12', 'AB12', 'a direction mark'],
    ['\ufeffAB12', 'AB12', 'an invisible mark before it'],
    ['ＡＢ１２', 'AB12', 'full-width letters and digits'],
    ['AB\u00a012', 'AB 12', 'a no-break space is a space'],
  ])('written: %j is %s – %s', (code, written) => {
    expect(codeForms(code).written).toBe(written);
  });

  it('written: keeps what can be seen – inner spaces, hyphens, zeros, letters that look like digits', () => {
    for (const code of ['AB 12', 'AB-12', '0012', 'O012', '12.03.15'])
      expect(codeForms(code).written).toBe(code);
  });

  it.each([
    ['AB-12 34', 'AB1234'],
    ['12.03.15', '120315'],
    ['AB/12_3', 'AB123'],
    ['LOT 1234', '1234'],
    ['Lot No. 1234', '1234'],
    ['Batch: X7', 'X7'],
    ['LOTUS', 'LOTUS'],
    ['--', '--'],
  ])('plain: %s is %s', (code, plain) => {
    expect(codeForms(code).plain).toBe(plain);
  });

  it.each([
    ['O', '0'],
    ['o', '0'],
    ['I', '1'],
    ['l', '1'],
    ['|', '1'],
    ['S', '5'],
    ['B', '8'],
    ['Z', '2'],
    ['G', '6'],
    ['\u0410', 'A'],
    ['\u0412', '8'],
    ['\u039f', '0'],
    ['\u0455', '5'],
  ])('seen: %s is taken for %s', (letter, digit) => {
    expect(codeForms(`X${letter}7`).seen).toBe(`X${digit}7`);
  });

  it('seen: other letters stay', () => {
    expect(codeForms('ACDEFHJKMNPQRTUVWXY3479').seen).toBe('ACDEFHJKMNPQRTUVWXY3479');
  });

  it.each([
    ['007', '7'],
    ['000', '0'],
    ['0A7', '0A7'],
    ['O07', '7'],
  ])('value: %s is %s', (code, value) => {
    expect(codeForms(code).value).toBe(value);
  });

  it('folding again changes nothing', () => {
    fc.assert(
      fc.property(anyText, (code) => {
        const { written, seen } = codeForms(code);
        expect(codeForms(written).written).toBe(written);
        expect(codeForms(written).plain).toBe(codeForms(code).plain);
        expect(codeForms(seen).seen).toBe(seen);
      }),
    );
  });

  it('codes of one form have every blinder form in common', () => {
    const code = fc.string({ unit: fc.constantFrom('A', 'O', '0', 'o', '-', ' ', '1'), maxLength: 5 });
    fc.assert(
      fc.property(code, code, (one, other) => {
        const [a, b] = [codeForms(one), codeForms(other)];
        if (a.written === b.written) expect(a.plain).toBe(b.plain);
        if (a.plain === b.plain) expect(a.seen).toBe(b.seen);
        if (a.seen === b.seen) expect(a.value).toBe(b.value);
      }),
      { numRuns: 2_000 },
    );
  });
});

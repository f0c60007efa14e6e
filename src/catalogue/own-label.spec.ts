import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hasValidCheckDigit } from './gs1/check-digit.js';
import { parseElementString, printElementString } from './gs1/element-string.js';
import {
  checkLabelCode,
  formatLabelCode,
  labelCodeRandomBytes,
  labelElementString,
  makeLabelCode,
} from './own-label.js';

const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const gtin = '09506000134352';

const arbitraryCode = fc
  .uint8Array({ minLength: labelCodeRandomBytes, maxLength: labelCodeRandomBytes })
  .map(makeLabelCode);

function isRight(code: string): boolean {
  return checkLabelCode(code).ok;
}

function replaceAt(code: string, index: number, text: string): string {
  return code.slice(0, index) + text + code.slice(index + text.length);
}

describe('a label code', () => {
  it('is twelve characters that begin with a letter, and reads back as itself', () => {
    fc.assert(
      fc.property(arbitraryCode, (code) => {
        expect(code).toMatch(/^[A-HJKMNP-TV-Z][0-9A-HJKMNP-TV-Z]{11}$/);
        expect(checkLabelCode(code)).toEqual({ ok: true, code });
        expect(hasValidCheckDigit(code)).toBe(false);
      }),
    );
  });

  it('catches every wrong character at every place', () => {
    fc.assert(
      fc.property(arbitraryCode, (code) => {
        for (let index = 0; index < code.length; index++) {
          for (const character of alphabet) {
            expect(isRight(replaceAt(code, index, character))).toBe(character === code.charAt(index));
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  it('catches every exchange of two different characters, at every pair of places', () => {
    // The check is linear: whether an exchange is caught depends only on the two places and the two characters,
    // so trying all of both, in any code, is the whole proof.
    const code = makeLabelCode(new Uint8Array(labelCodeRandomBytes));
    for (let first = 0; first < 11; first++) {
      for (let second = first + 1; second < 12; second++) {
        for (const one of alphabet) {
          for (const other of alphabet) {
            if (one === other) continue;
            const before = makeRight(code, [first, second], one + other);
            if (before === undefined) continue;
            const after = replaceAt(replaceAt(before, first, other), second, one);
            expect(isRight(before)).toBe(true);
            expect(isRight(after)).toBe(false);
          }
        }
      }
    }
  });

  it('catches every doubled character read as another double', () => {
    fc.assert(
      fc.property(arbitraryCode, fc.integer({ min: 1, max: 9 }), (code, index) => {
        for (const one of alphabet) {
          const before = makeRight(code, [index, index + 1], one + one);
          for (const other of alphabet) {
            if (before === undefined || one === other) continue;
            expect(isRight(replaceAt(before, index, other + other))).toBe(false);
          }
        }
      }),
      { numRuns: 20 },
    );
  });

  it('lets no more than about one in 32 other texts of its shape pass', () => {
    let passed = 0;
    const runs = 3200;
    fc.assert(
      fc.property(
        arbitraryCode,
        fc.string({ unit: fc.constantFrom(...alphabet), minLength: 11, maxLength: 11 }),
        (code, rest) => {
          if (isRight(code.charAt(0) + rest)) passed += 1;
        },
      ),
      { numRuns: runs, seed: 7 },
    );
    expect(passed / runs).toBeGreaterThan(0.5 / 32);
    expect(passed / runs).toBeLessThan(2 / 32);
  });

  it('folds case, O, I and L, and ignores hyphens', () => {
    const code = makeLabelCode(Uint8Array.from([0, 0, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1]));
    expect(code.slice(0, 11)).toBe('A0101010101'.slice(0, 11));
    const typed = `${code.toLowerCase().slice(0, 1)}o-IoL0i0l0i${code.slice(11).toLowerCase()}`;
    expect(checkLabelCode(typed)).toEqual({ ok: true, code });
    expect(checkLabelCode(formatLabelCode(code))).toEqual({ ok: true, code });
    expect(formatLabelCode(code)).toMatch(/^.{4}-.{4}-.{4}$/);
  });

  it.each([
    ['', 'wrong length'],
    ['A', 'wrong length'],
    ['ABCDEFGHJKMNP', 'wrong length'],
    ['ABCDEFGHJKMU', 'foreign character'],
    ['ABCDEFGHJKM*', 'foreign character'],
    ['ABCDEFGHJKMı', 'foreign character'],
    ['123456789012', 'first not a letter'],
    ['OBCDEFGHJKMN', 'first not a letter'],
  ])('refuses "%s": %s', (text, reason) => {
    expect(checkLabelCode(text)).toMatchObject({ ok: false, reason });
  });

  it('is not made from too little chance', () => {
    expect(() => makeLabelCode(new Uint8Array(11))).toThrow('needs 12 random bytes');
  });
});

/** A right code with these characters at these places: some other place, not the first, makes up for them. */
function makeRight(code: string, places: readonly [number, number], characters: string): string | undefined {
  const placed = replaceAt(replaceAt(code, places[0], characters.charAt(0)), places[1], characters.charAt(1));
  const free = [5, 6, 7].find((place) => !places.includes(place)) ?? 5;
  return [...alphabet].map((character) => replaceAt(placed, free, character)).find(isRight);
}

describe('the symbol of an own label', () => {
  const code = makeLabelCode(new Uint8Array(labelCodeRandomBytes));

  it('holds the code alone when there is no GTIN to go with use-by and lot', () => {
    expect(labelElementString({ code, useBy: '2027-01-31', lotCode: 'AB' }, 2026)).toEqual([
      { applicationIdentifier: '91', value: code },
    ]);
  });

  it('holds GTIN, use-by, lot and code in this order, and GS1 has nothing against it', () => {
    const elements = labelElementString({ code, gtin14: gtin, useBy: '2027-01-31', lotCode: 'AB-1' }, 2026);
    const raw = printElementString(elements, 'raw');
    expect(raw).toBe(`01${gtin}1727013110AB-1\u001d91${code}`);
    expect(parseElementString(raw, { today: '2026-03-01' })).toEqual({ elements, errors: [] });
  });

  it('leaves out a lot code that GS1 cannot carry', () => {
    for (const lotCode of ['LOT #4', '', '123456789012345678901', 'Ä1']) {
      const identifiers = labelElementString({ code, gtin14: gtin, lotCode }, 2026).map(
        (element) => element.applicationIdentifier,
      );
      expect(identifiers).toEqual(['01', '91']);
    }
  });

  it('leaves out a date that a reader would take for another century', () => {
    const useByOf = (useBy: string) =>
      labelElementString({ code, gtin14: gtin, useBy }, 2026).find(
        ({ applicationIdentifier }) => applicationIdentifier === '17',
      )?.value;
    expect(useByOf('2077-01-31')).toBeUndefined();
    expect(useByOf('2076-01-31')).toBe('760131');
  });
});

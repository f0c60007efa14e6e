import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standardText } from './standard-text.js';

describe('text in the standard fonts of a PDF', () => {
  it('leaves what Windows-1252 has as it is', () => {
    const text = 'Müller & Söhne – “Umber” 12 µl, 5 €, façade, naïve…';
    expect(standardText(text)).toEqual({ text, replaced: 0 });
  });

  it('takes off accents that the fonts lack, and says so', () => {
    expect(standardText('Łódź Dvořák')).toEqual({ text: '¿ódz Dvorák', replaced: 3 });
  });

  it('shows what the fonts lack as a mark and not as other letters', () => {
    expect(standardText('Лот 12 染料')).toEqual({ text: '¿¿¿ 12 ¿¿', replaced: 5 });
  });

  it('keeps marks of direction, controls and lines out of the line', () => {
    expect(standardText('AB\u202E12\u0000\u20283\u200B')).toEqual({ text: 'AB12  3', replaced: 0 });
  });

  /** The bytes 80 to 9F of Windows-1252 by the WHATWG's Encoding Standard [M]; Node's own decoder takes them for Latin-1. */
  it('never leaves a character that Windows-1252 has not', () => {
    const latin = Array.from({ length: 256 }, (_, byte) => String.fromCharCode(byte));
    const known = new Set([...latin, ...'€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ']);
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (text) => {
        for (const character of standardText(text).text) expect(known.has(character)).toBe(true);
      }),
    );
  });
});

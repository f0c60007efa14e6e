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

  it('never leaves a character that Windows-1252 has not, by the platform’s own decoder', () => {
    const decoder = new TextDecoder('windows-1252');
    const known = new Set(Array.from({ length: 256 }, (_, byte) => decoder.decode(Uint8Array.of(byte))));
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (text) => {
        for (const character of standardText(text).text) expect(known.has(character)).toBe(true);
      }),
    );
  });
});

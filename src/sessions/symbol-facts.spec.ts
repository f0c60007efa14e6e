import { describe, expect, it } from 'vitest';
import { readSymbol } from '../catalogue/barcode.js';
import { makeLabelCode } from '../catalogue/own-label.js';
import { knownByOf, pieceSerialOf, serialOf, useByOf } from './symbol-facts.js';

const today = '2026-03-10';
const read = (text: string) => readSymbol({ text }, today);
const full = read('(01)09506000134352(17)271231(10)C7(21)S9');

describe('what a symbol tells the tray', () => {
  it('gives the serial and the use-by where the symbol has them', () => {
    expect([serialOf(full), useByOf(full)]).toEqual(['S9', '2027-12-31']);
    const bare = read('(01)09506000134352(10)C7');
    expect([serialOf(bare), useByOf(bare)]).toEqual([null, null]);
    expect([serialOf(null), useByOf(null)]).toEqual([null, null]);
  });

  it('takes the serial for that of a piece only where the symbol stands on a single one', () => {
    expect(pieceSerialOf(full, 1)).toBe('S9');
    expect(pieceSerialOf(full, 20)).toBeNull();
    expect(pieceSerialOf(full, null)).toBeNull();
    expect(pieceSerialOf(null, 1)).toBeNull();
  });

  it('takes "no use after" (AI 7003) for a last day of use', () => {
    expect(useByOf(read('(01)09506000134352(7003)2601011200'))).toBe('2026-01-01');
  });

  it('says how the lot was known', () => {
    expect(knownByOf(full)).toBe("maker's symbol");
    expect(knownByOf(read('(01)09506000134352'))).toBe('picked from a list');
    expect(knownByOf(read('9506000134352'))).toBe('picked from a list');
    expect(knownByOf(read(makeLabelCode(new Uint8Array(12).fill(7))))).toBe('own label');
    expect(knownByOf(read('HT 5'))).toBe('typed');
    expect(knownByOf(null)).toBe('picked from a list');
  });
});

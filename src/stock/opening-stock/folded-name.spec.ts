import { describe, expect, it } from 'vitest';
import { foldedName } from './folded-name.js';

describe('a folded name', () => {
  it('is the same for spellings that differ in capitals, spaces and the encoding of accents', () => {
    expect(foldedName('  Halden  Colour WORKS ')).toBe('halden colour works');
    expect(foldedName('Jo\u0308rdis')).toBe(foldedName('JÖRDIS'));
    expect(foldedName(null)).toBe('');
  });
});

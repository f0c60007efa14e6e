import { describe, expect, it } from 'vitest';
import {
  characterSet32,
  characterSet39,
  characterSet64,
  characterSet82,
  findForeignCharacter,
} from './character-sets.js';

describe('the character sets', () => {
  it('have as many different characters as their names say', () => {
    expect(new Set(characterSet32).size).toBe(32);
    expect(new Set(characterSet39).size).toBe(39);
    expect(new Set(characterSet64).size).toBe(64);
    expect(new Set(characterSet82).size).toBe(82);
    expect(characterSet82).toHaveLength(82);
  });

  it('keep space, #, $, @ and [ out of set 82 [P]', () => {
    for (const character of ' #$@[') expect(findForeignCharacter(`A${character}`, 'X')).toBe(1);
    expect(findForeignCharacter(characterSet82, 'X')).toBe(-1);
  });

  it('find the first foreign character, whatever it is', () => {
    expect(findForeignCharacter('12٣4', 'N')).toBe(2);
    expect(findForeignCharacter('ab', 'Y')).toBe(0);
    expect(findForeignCharacter('A\u0000', 'X')).toBe(1);
    expect(findForeignCharacter('', 'X')).toBe(-1);
  });

  it('let set 64 end in padding that fills it to a multiple of three [P]', () => {
    for (const right of ['1', '12', '123', '12=', '1==']) expect(findForeignCharacter(right, 'Z')).toBe(-1);
    for (const wrong of ['123=', '12==', '1===', '===']) {
      expect(findForeignCharacter(wrong, 'Z')).toBe(wrong.indexOf('='));
    }
    expect(findForeignCharacter('1=2', 'Z')).toBe(1);
  });
});

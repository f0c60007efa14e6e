import { describe, expect, it } from 'vitest';
import { type KeyMeaning, readKey, type TypedKey } from './typed-keys.js';

const key = (name: string, given: Partial<TypedKey> = {}): TypedKey => ({
  down: true,
  key: name,
  code: '',
  control: false,
  alt: false,
  meta: false,
  ...given,
});

/** What the last of the keys means. */
function meaning(...keys: TypedKey[]): KeyMeaning | undefined {
  let altDigits = '';
  let means: KeyMeaning | undefined;
  for (const typed of keys) ({ altDigits, means } = readKey(altDigits, typed));
  return means;
}

const altCode = (digits: string) => [
  key('Alt', { alt: true }),
  ...[...digits].map((digit) => key(digit, { code: `Numpad${digit}`, alt: true })),
  key('Alt', { down: false }),
];

describe('a separator', () => {
  it.each([
    ['Ctrl and ]', [key(']', { control: true, code: 'BracketRight' })]],
    ['Ctrl and the key of ] on another layout', [key('*', { control: true, code: 'BracketRight' })]],
    ['the character itself', [key('\u001d')]],
    ['F8', [key('F8')]],
    ['Alt and 029', altCode('029')],
    ['Alt and 29', altCode('29')],
  ])('is %s', (_, keys) => {
    expect(meaning(...keys)).toBe('separator');
  });

  it('is no other Alt code, and none that began before', () => {
    expect(meaning(...altCode('065'))).toBe('other');
    expect(meaning(...altCode('02'), ...altCode('9'))).toBe('other');
  });
});

describe('a character', () => {
  it('is what one key types, also ] by itself and by AltGr', () => {
    for (const typed of [key('0'), key('A'), key(' '), key(']'), key(']', { control: true, alt: true })]) {
      expect(meaning(typed)).toBe('character');
    }
  });

  it('is nothing that commands the browser: copying, enlarging the page, moving on', () => {
    const plus = key('+', { control: true, code: 'BracketRight' });
    for (const typed of [
      key('c', { control: true }),
      key('v', { meta: true }),
      plus,
      key('Tab'),
      key('Enter'),
    ]) {
      expect(meaning(typed)).toBe('other');
    }
  });
});

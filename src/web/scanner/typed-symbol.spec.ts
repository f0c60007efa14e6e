import { expect, it } from 'vitest';
import { isUsableSubstitute, withSeparators } from './typed-symbol.js';

it('puts separators where a scanner types something visible in their place', () => {
  expect(withSeparators('10AB~21X', '~')).toBe('10AB\u001d21X');
  expect(withSeparators('10AB^]21X^]11', '^]')).toBe('10AB\u001d21X\u001d11');
  expect(withSeparators('10AB{GS}21X\u241d17', '')).toBe('10AB\u001d21X\u001d17');
});

it('leaves alone what nobody chose, and separators that are there', () => {
  expect(withSeparators('AB~21', '')).toBe('AB~21');
  expect(withSeparators(']d210AB\u001d21X', '')).toBe(']d210AB\u001d21X');
});

it('drops the one that opens a symbol', () => {
  expect(withSeparators('\u001d0109506000134352', '')).toBe('0109506000134352');
  expect(withSeparators('~0109506000134352', '~')).toBe('0109506000134352');
});

it('lets nothing stand for a separator that a GS1 symbol may hold itself', () => {
  for (const good of ['~', '|', '#', '^]', '@@', '<GS>~', '\u241d'])
    expect(isUsableSubstitute(good)).toBe(true);
  for (const bad of ['', 'A', '1', '-', '/', ' ', ':', '(', ']', '<GS>', '~ ', '~~~~~~~']) {
    expect(isUsableSubstitute(bad)).toBe(false);
  }
});

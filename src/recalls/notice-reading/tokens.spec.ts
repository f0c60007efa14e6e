import { describe, expect, it } from 'vitest';
import { plainWord, tokensOf } from './tokens.js';

const words = (text: string): string[] => tokensOf(text).map((token) => token.text);

describe('the tokens of a text', () => {
  it.each([
    ['Lot #A-12/3, 12.03.15;', ['Lot', '#', 'A-12/3', ',', '12.03.15', ';']],
    ['A12.The lot', ['A12', '.', 'The', 'lot']],
    ['Ch.-B.: 7', ['Ch', '.', '-', 'B', '.', ':', '7']],
    ['a -b', ['a', '-', 'b']],
    ['a\n\nb', ['a', '\n', 'b']],
  ])('%j', (text, expected) => {
    expect(words(text)).toEqual(expected);
  });

  it('know what stands before them and where they stand', () => {
    const tokens = tokensOf('a  b\tc d\n e\n\nf');
    expect(tokens.map(({ gap }) => gap)).toEqual([
      'none',
      'wide',
      'wide',
      'space',
      'none',
      'space',
      'none',
      'none',
    ]);
    expect(tokens.map(({ kind }) => kind).filter((kind) => kind !== 'word')).toEqual([
      'line end',
      'blank line',
    ]);
    for (const token of tokens.filter(({ kind }) => kind === 'word')) {
      expect('a  b\tc d\n e\n\nf'.slice(token.start, token.end)).toBe(token.text);
    }
  });

  it('are compared by small letters without accents', () => {
    expect(plainWord('Número')).toBe('numero');
    expect(plainWord('MASSNAHMEN')).toBe('massnahmen');
    expect(plainWord('Maßnahmen')).toBe('massnahmen');
  });
});

import { describe, expect, it } from 'vitest';
import { foldText, spanOf } from './folded-text.js';

describe('a folded text', () => {
  it.each([
    ['ＡＢ１２', 'AB12', 'wide forms'],
    ['\u0410\u041212', 'AB12', 'Cyrillic letters beside digits'],
    ['L\u039FT', 'LOT', 'a Greek letter among Latin ones'],
    ['\u200fAB\u200b12\ufeff', 'AB12', 'marks nobody sees'],
    ['AB\u00a012', 'AB 12', 'a space that does not break'],
    ['07\u201109', '07-09', 'a hyphen that does not break'],
    ['07\u201409', '07\u201309', 'a long dash, which is told apart from a hyphen'],
    ['\u0661\u0662\u0663', '123', 'Arabic digits'],
    ['a\r\nb\u2028c', 'a\nb\nc', 'line ends'],
    ['a\u0000b', 'a b', 'control characters'],
    ['\u{1D7D0}\u{1D400}', '2A', 'mathematical alphabets'],
    ['Партия', 'Партия', 'a real word of another script, which stays'],
  ])('reads %j as %j: %s', (raw, folded) => {
    expect(foldText(raw).text).toBe(folded);
  });

  it('leads back to what was written', () => {
    const raw = 'Lot\u200f \u{1D7D0}\u0410B, x';
    const folded = foldText(raw);
    const start = folded.text.indexOf('2AB');
    const span = spanOf(folded, start, start + 3);
    expect(raw.slice(span.start, span.end)).toBe('\u{1D7D0}\u0410B');
  });

  it('says what it folded, once a word', () => {
    const { foldings, counts } = foldText('\u200fL\u039FT \u0410\u0412');
    expect(foldings.map(({ kind, folded }) => [kind, folded])).toEqual([
      ['invisible marks', ''],
      ['look-alike letters', 'LOT'],
      ['look-alike letters', 'AB'],
    ]);
    expect(counts['look-alike letters']).toBe(2);
  });
});

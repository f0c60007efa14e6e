import { describe, expect, it } from 'vitest';
import { plainLine } from './plain-line.js';

describe('a plain line', () => {
  it.each([
    ['two\r\nlines', 'two lines'],
    ['a\u2028b\u2029c', 'a b c'],
    ['\u0000bell\u0007', 'bell'],
    ['\u202Egpj.exe', 'gpj.exe'],
    ['\u2066in\u2069 \u200Fout', 'in out'],
    ['half \uD83D of one', 'half \uFFFD of one'],
    ['tag\u{E0041}ged', 'tagged'],
    ['Größe 名 😀', 'Größe 名 😀'],
  ])('is %j read as %j', (text, line) => {
    expect(plainLine(text, 100)).toBe(line);
  });

  it('ends with an ellipsis where it is cut, and never within a character', () => {
    expect(plainLine('😀😀😀😀', 3)).toBe('😀😀…');
    expect(plainLine('one two', 5)).toBe('one…');
    expect(plainLine('exact', 5)).toBe('exact');
  });
});

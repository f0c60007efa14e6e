import { describe, expect, it } from 'vitest';
import { KnownNames } from './known-names.js';
import { marksOf } from './notice-marks.js';
import { nameBefore, namesInList, restOfLine, tidyName } from './notice-names.js';
import { tokensOf } from './tokens.js';

const rest = (text: string, untilComma = false) =>
  restOfLine(tokensOf(text), 0, () => false, { untilComma, most: 20 })?.text ?? null;
const nameOfLine = (text: string) => {
  const tokens = tokensOf(text);
  const marks = marksOf(tokens, new KnownNames([]));
  return nameBefore(tokens, marks.labels.places.at(-1) ?? 0, marks)?.text ?? null;
};

describe('a name', () => {
  it('runs to the end of its line, without the signs around it', () => {
    expect(rest('"Brow Ink (Walnut)", \nLot')).toBe('Brow Ink (Walnut)');
    expect(rest(' - \n')).toBeNull();
  });

  it('of a firm ends at the comma, but not before its legal form', () => {
    expect(rest('Northlight, Inc., Town, by letter', true)).toBe('Northlight, Inc');
  });

  it('is cut when it is too long to be one', () => {
    expect(rest('word '.repeat(300))?.length).toBeLessThanOrEqual(200);
  });

  it('keeps its place', () => {
    const text = '- Brow Ink:';
    const name = tidyName(tokensOf(text), 0, 4);
    expect(text.slice(name?.start, name?.end)).toBe('Brow Ink');
  });

  it.each([
    ['Walnut, Sand and Rose', ['Walnut', 'Sand', 'Rose']],
    ['Black & Blue', ['Black & Blue', 'Black', 'Blue']],
    ['Walnut', ['Walnut']],
  ])('may be several: %s', (text, names) => {
    expect(namesInList({ text, start: 0, end: text.length }, text).map((name) => name.text)).toEqual(names);
  });

  it('may stand before the lots of a line', () => {
    expect(nameOfLine('Brow Ink Walnut \u2013 lots A1')).toBe('Brow Ink Walnut');
    expect(nameOfLine('x\n2) Brow Ink (Walnut), Lot A1')).toBe('Brow Ink (Walnut)');
  });

  it.each([
    'Affected lots A1',
    'We recall Brow Ink, lots A1',
    'brow lots A1',
    'Recall. Stop. Lots A1',
    'Urgent: Lot A1',
    'Lot A1',
  ])('is not made of a sentence: %s', (text) => {
    expect(nameOfLine(text)).toBeNull();
  });
});

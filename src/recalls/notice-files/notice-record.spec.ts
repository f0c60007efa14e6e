import { describe, expect, it } from 'vitest';
import { fieldName, inOneLine, keepable, recordText, saysUnknown } from './notice-record.js';

describe('a notice written out', () => {
  it('has a line for each field that says something, in their order', () => {
    expect(
      recordText([
        ['Reference', ' X-1 '],
        ['Risk', ''],
        ['Danger', ' \n '],
        ['Lot', 'a\r\nb\rc'],
      ]),
    ).toBe('Reference: X-1\nLot: a\nb\nc');
  });

  it('keeps what a database can hold and marks where it could not', () => {
    expect(keepable('a\u0000b\u0007c\uD800d\u007Fe\tf\ng😀')).toBe('a\uFFFDb\uFFFDc\uFFFDd\uFFFDe\tf\ng😀');
  });

  it.each([
    ['batchNumber', 'Batch number'],
    ['code_info', 'Code info'],
    ['type_numberOfModel', 'Type number of model'],
    ['URLrecall', 'URLrecall'],
    ['use by from', 'Use by from'],
  ])('names the field %s %s', (field, name) => {
    expect(fieldName(field)).toBe(name);
  });

  it('is shortened visibly where a line has room for less, and never in the middle of a character', () => {
    expect(inOneLine(' one\n  two ', 7)).toBe('one two');
    expect(inOneLine('one two three', 8)).toBe('one two…');
    expect(inOneLine('abc😀d', 5)).toBe('abc…');
    expect(inOneLine(' \n ', 5)).toBeNull();
  });

  it.each(['Unknown', 'unknown.', 'No brand', 'not branded', 'N/A', 'none', '-', '--', '?', 'Not specified'])(
    'says nothing by %j',
    (text) => {
      expect(saysUnknown(text)).toBe(true);
    },
  );

  it.each(['Nonesuch', 'Unknown Pleasures', 'N', 'No. 7'])('says something by %j', (text) => {
    expect(saysUnknown(text)).toBe(false);
  });
});

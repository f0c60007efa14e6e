import { describe, expect, it } from 'vitest';
import { declaredEncoding } from './declared-encoding.js';

describe('an encoding', () => {
  it.each([
    ['\u00EF\u00BB\u00BF{}', 'text/xml; charset=iso-8859-1', 'utf-8'],
    ['\u00FF\u00FE<\0', null, 'utf-16le'],
    ['\u00FE\u00FF\0<', null, 'utf-16be'],
    ['<?xml version="1.0" encoding="ISO-8859-1"?>', 'application/xml', 'iso-8859-1'],
    ["<?xml version='1.0' encoding='windows-1252'?>", null, 'windows-1252'],
    ['<?xml version="1.0" encoding="ISO-8859-1"?>', 'text/xml;charset="UTF-8"', 'utf-8'],
    ['a;b', 'text/csv; header=present; charset=windows-1252', 'windows-1252'],
    ['{}', 'application/json', 'utf-8'],
    ['<r encoding="latin1"/>', null, 'utf-8'],
  ])('of %j, said to be %s, is %s', (beginning, contentType, encoding) => {
    expect(declaredEncoding(beginning, contentType)).toBe(encoding);
  });
});

import { describe, expect, it } from 'vitest';
import { codeEntryAt, isQuantity, isStrongCode, mayBeCode, shapeOf } from './lot-codes.js';
import { type Token, tokensOf } from './tokens.js';

const entry = (text: string, shapes: string[] = []) => {
  const found = codeEntryAt(tokensOf(text), 0, { isTaken: () => false, shapes: new Set(shapes) });
  return found === null ? null : [found.codes.map((code) => code.text), found.alternatives];
};
const one = (text: string): Token => tokensOf(text)[0] as Token;

describe('a code in a list', () => {
  it.each<[string, string[], string[]]>([
    ['A12, B13', ['A12'], []],
    ['AB 12-34', ['AB 12-34'], []],
    ['513602 00-001-BN', ['513602 00-001-BN'], ['513602', '00-001-BN']],
    ['DU 12-34', ['DU 12-34'], ['12-34']],
    ['11111 22222 33333', ['11111', '22222', '33333'], []],
    ['A12 was', ['A12'], []],
    ['A12  B13', ['A12'], []],
    ['A12 10 bottles', ['A12'], []],
  ])('%s', (text, codes, alternatives) => {
    expect(entry(text)).toEqual([codes, alternatives]);
  });

  it('is parted by a space where each part has the shape of codes before it', () => {
    expect(entry('110737A 110738B', ['999999A'])).toEqual([['110737A', '110738B'], []]);
    expect(entry('110737A 110738B')?.[0]).toEqual(['110737A 110738B']);
  });

  it.each(['A', 'A1', '12.03.15', '0BMHX', 'TFRS', '007'])('may be %s', (text) => {
    expect(mayBeCode(one(text))).toBe(true);
  });

  it.each(['was', 'The', 'AND', 'EXPIRY', 'a', `${'9'.repeat(61)}`])('may not be %s', (text) => {
    expect(mayBeCode(one(text))).toBe(false);
  });

  it('can be nothing else when it has letters and digits, or many digits', () => {
    expect(['LF00478C', '16GS36753', '12345'].every((text) => isStrongCode(one(text)))).toBe(true);
    expect(['250ml', 'B12', '2015', 'tablets'].some((text) => isStrongCode(one(text)))).toBe(false);
  });

  it('is no quantity', () => {
    expect(isQuantity(tokensOf('12 bottles'), 0)).toBe(true);
    expect(isQuantity(tokensOf('12, 13'), 0)).toBe(false);
  });

  it('has a shape', () => {
    expect(shapeOf('AB 12-3')).toBe('AA 99-9');
  });
});

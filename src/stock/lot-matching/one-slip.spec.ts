import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isLikelySlip, isOneSlipApart, withoutOne } from './one-slip.js';

/**
 * Optimal string alignment, the textbook way: the restricted form of Damerau's distance. A second opinion, slow and
 * plain.
 */
function alignmentDistance(one: string, other: string): number {
  const rows = Array.from({ length: one.length + 1 }, (_, row) =>
    Array.from({ length: other.length + 1 }, (_, column) => (row === 0 ? column : column === 0 ? row : 0)),
  );
  const at = (row: number, column: number) => rows[row]?.[column] ?? 0;
  for (let row = 1; row <= one.length; row += 1) {
    for (let column = 1; column <= other.length; column += 1) {
      const change = one[row - 1] === other[column - 1] ? 0 : 1;
      const ways = [at(row - 1, column) + 1, at(row, column - 1) + 1, at(row - 1, column - 1) + change];
      const swapped = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      if (row > 1 && column > 1 && swapped) ways.push(at(row - 2, column - 2) + 1);
      const line = rows[row];
      if (line) line[column] = Math.min(...ways);
    }
  }
  return at(one.length, other.length);
}

const text = fc.string({ unit: fc.constantFrom('A', 'B', '0', '1'), maxLength: 8 });

describe('one slip of the hand', () => {
  /** CA to ABC is 3: guide of string-similarity, "Optimal String Alignment" [S]. The others are common examples [M]. */
  it('is measured against a distance that gives the published examples', () => {
    expect(alignmentDistance('CA', 'ABC')).toBe(3);
    expect(alignmentDistance('KITTEN', 'SITTING')).toBe(3);
    expect(alignmentDistance('SATURDAY', 'SUNDAY')).toBe(3);
    expect(alignmentDistance('TEH', 'THE')).toBe(1);
  });

  it('is a distance of one, neither more nor less', () => {
    fc.assert(
      fc.property(text, text, (one, other) => {
        expect(isOneSlipApart(one, other)).toBe(alignmentDistance(one, other) === 1);
      }),
      { numRuns: 3_000 },
    );
  });

  it.each([
    ['a character changed', '07110002', '07110008', true],
    ['one missing', '07110002', '0711002', true],
    ['one added', '07110002', '071100022', true],
    ['two neighbours swapped', '07110002', '07101002', true],
    ['the last two swapped', 'AB12', 'AB21', true],
    ['the first missing', 'AB12', 'B12', true],
    ['equal', 'AB12', 'AB12', false],
    ['two changed', 'AB12', 'AB34', false],
    ['two that are no neighbours swapped', 'AB12', '1BA2', false],
    ['swapped, and another changed', 'AB123', 'BA124', false],
    ['two missing', 'AB1234', 'AB12', false],
  ])('%s', (_, one, other, expected) => {
    expect(isOneSlipApart(one, other)).toBe(expected);
    expect(isOneSlipApart(other, one)).toBe(expected);
  });

  it('says nothing of codes that are too short: the longer one needs four characters', () => {
    expect(isLikelySlip('A12', 'A13')).toBe(false);
    expect(isLikelySlip('A12', 'A123')).toBe(true);
    expect(isLikelySlip('A124', 'A123')).toBe(true);
  });

  it('is never missed by what texts share without one character', () => {
    fc.assert(
      fc.property(text, text, (one, other) => {
        fc.pre(isOneSlipApart(one, other));
        const rests = new Set([one, ...withoutOne(one)]);
        expect([other, ...withoutOne(other)].some((rest) => rests.has(rest))).toBe(true);
      }),
      { numRuns: 300, maxSkipsPerRun: 2_000 },
    );
  });
});

import { describe, expect, it } from 'vitest';
import { KnownNames } from './known-names.js';
import { marksOf, numberingAt } from './notice-marks.js';
import { tokensOf } from './tokens.js';

const numbers = (text: string) => numberingAt(tokensOf(text), 0)?.keys ?? null;

describe('the numbers of a list', () => {
  it.each([
    ['1) Lot', ['1']],
    ['a) Lot', ['a']],
    ['(2) Lot', ['2']],
    ['3. Lot', ['3']],
    ['1) - 5) Lot', ['1', '2', '3', '4', '5']],
    ['1) -3) Lot', ['1', '2', '3']],
    ['1) and 3) Lot', ['1', '3']],
    ['2), 3), 4) Lot', ['2', '3', '4']],
  ])('%s', (text, keys) => {
    expect(numbers(text)).toEqual(keys);
  });

  it.each(['A1) x', '123) x', '1 ) x', '3.5 ml', 'Lot 1)'])('are not in %s', (text) => {
    expect(numbers(text)).toBeNull();
  });
});

describe('marks', () => {
  it('prefer a name of the register to a label within it', () => {
    const known = new KnownNames([
      { productId: '1', makerName: 'Lot Makers', productName: 'Batch Ink', shade: null, gtins: [] },
    ]);
    const marks = marksOf(tokensOf('Batch Ink, Lot 1'), known);
    expect(marks.names.has(0)).toBe(true);
    expect(marks.labels.places).toEqual([3]);
  });
});

import { describe, expect, it } from 'vitest';
import { tableAt } from './notice-tables.js';
import { tokensOf } from './tokens.js';

const table = (text: string) => {
  const tokens = tokensOf(text);
  const found = tableAt(tokens, 0);
  if (found === null) return null;
  const cell = (from: number, to: number): string =>
    tokens
      .slice(from, to)
      .map((token) => token.text)
      .join(' ');
  return { columns: found.columns, rows: found.rows.map((row) => row.map(({ from, to }) => cell(from, to))) };
};

describe('a table', () => {
  it.each([
    ['tabs', 'Product\tLot\tExpiry\nBrow Ink\tA1\t10/27\nLip Ink\tB1, B2\t11/27\n\nStop'],
    [
      'columns',
      'Product      Lot        Expiry\nBrow Ink     A1         10/27\nLip Ink      B1, B2     11/27',
    ],
    [
      'upright lines',
      '| Product | Lot | Expiry |\n|---|---|---|\n| Brow Ink | A1 | 10/27 |\n| Lip Ink | B1, B2 | 11/27 |',
    ],
    ['semicolons', 'Product;Lot;Expiry\nBrow Ink;A1;10/27\nLip Ink;B1, B2;11/27'],
  ])('is taken apart by %s', (_name, text) => {
    const found = table(text);
    expect(found?.columns.filter((role) => role !== null)).toEqual(['product', 'lot', 'use-by']);
    expect(found?.rows.map((row) => row.filter((cell) => cell !== ''))).toEqual([
      ['Brow Ink', 'A1', '10/27'],
      ['Lip Ink', 'B1 , B2', '11/27'],
    ]);
  });

  it('keeps cells that are empty', () => {
    expect(table('Product\tLot\tExpiry\n\tA1\t10/27\nLip Ink\t\t11/27')?.rows).toEqual([
      ['', 'A1', '10/27'],
      ['Lip Ink', '', '11/27'],
    ]);
  });

  it.each([
    'Product: Brow Ink\nLot: A1',
    'Lot A1\nLot A2',
    'Product\tShade\nBrow Ink\tWalnut',
    'Product\tLot\n\nBrow Ink\tA1',
  ])('is not %j', (text) => {
    expect(table(text)).toBeNull();
  });
});

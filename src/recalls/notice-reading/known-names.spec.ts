import { describe, expect, it } from 'vitest';
import { KnownNames } from './known-names.js';
import { tokensOf } from './tokens.js';

const product = (productId: string, makerName: string, productName: string, shade: string | null) => ({
  productId,
  makerName,
  productName,
  shade,
  gtins: [],
});
const names = new KnownNames([
  product('1', 'Northlight Ltd', 'Brow Ink', 'Walnut'),
  product('2', 'Northlight Ltd', 'Brow Ink Pro', 'Sand'),
  product('3', 'Südwind', 'Crème 7', null),
]);
const at = (text: string, index = 0) =>
  names.at(tokensOf(text), index).map(({ kind, next, products }) => [kind, next, products]);

describe('names of the register', () => {
  it('are found at their longest, whatever their case and accents', () => {
    expect(at('BROW INK and')).toEqual([['product', 2, [0]]]);
    expect(at('brow-ink pro')).toEqual([['product', 2, [1]]]);
    expect(at('creme 7')).toEqual([['product', 2, [2]]]);
    expect(at('SUDWIND')).toEqual([['maker', 1, [2]]]);
  });

  it('belong to every product that bears them', () => {
    expect(at('Northlight Ltd')).toEqual([['maker', 2, [0, 1]]]);
  });

  it('are not found in parts of words', () => {
    expect(at('Walnuts')).toEqual([]);
    expect(at('Brow')).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { meantProducts } from './meant-products.js';
import type { KnownProduct } from './notice-reading.js';

const walnut: KnownProduct = {
  productId: 'walnut',
  makerName: 'Northlight',
  productName: 'Brow Ink',
  shade: 'Walnut',
  gtins: ['09501101530003'],
};
const sand: KnownProduct = { ...walnut, productId: 'sand', shade: 'Sand', gtins: ['09501101530010'] };
const byGtin = new Map<string, KnownProduct[]>();
for (const product of [walnut, sand]) for (const gtin of product.gtins) byGtin.set(gtin, [product]);
const meant = (item: { makerName?: string; productName?: string; shade?: string; gtins?: string[] }) =>
  meantProducts(
    { makerName: null, productName: null, shade: null, gtins: [], ...item },
    [walnut, sand],
    byGtin,
  );

describe('the products that are meant', () => {
  it('are those of the GTIN', () => {
    expect(meant({ gtins: ['09501101530003'] }).productIds).toEqual(['walnut']);
  });

  it('are none when one GTIN is not known, since that may be a further product', () => {
    expect(meant({ gtins: ['09501101530003', '09501101530027'] }).productIds).toEqual([]);
  });

  it('are those of maker, name and shade', () => {
    const names = { makerName: 'NORTHLIGHT Ltd', productName: 'Brow Ink 10 ml' };
    expect(meant({ ...names, shade: 'walnut' }).productIds).toEqual(['walnut']);
    expect(meant({ ...names, productName: 'Northlight Brow Ink Sand' }).productIds).toEqual(['sand']);
  });

  it('are all shades when none is named', () => {
    expect(meant({ makerName: 'Northlight', productName: 'Brow Ink' }).productIds).toEqual([
      'walnut',
      'sand',
    ]);
  });

  it.each([
    { productName: 'Brow Ink', shade: 'Walnut' },
    { makerName: 'Other', productName: 'Brow Ink', shade: 'Walnut' },
    { makerName: 'Northlight', productName: 'Brow Ink Pro', shade: 'Walnut' },
    { makerName: 'Northlight', productName: 'Brow Ink', shade: 'Coal' },
    { makerName: 'Northlight', productName: 'Brow Ink and Lip Ink', shade: 'Walnut' },
  ])('are none where a word does not fit: %o', (item) => {
    expect(meant(item).productIds).toEqual([]);
  });

  it('are none where number and name disagree', () => {
    expect(meant({ gtins: ['09501101530003'], productName: 'Lip Balm' })).toEqual({
      productIds: [],
      disagreeingGtin: '09501101530003',
    });
    expect(meant({ gtins: ['09501101530003'], productName: 'Brow Ink', shade: 'Sand' }).disagreeingGtin).toBe(
      '09501101530003',
    );
  });
});

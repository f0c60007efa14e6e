import { expect, it } from 'vitest';
import { type PlannableProduct, plannedItems } from './planned-items.js';

const product = (productId: string, facts: Partial<PlannableProduct> = {}): PlannableProduct => ({
  productId,
  makerName: 'Halden',
  productName: 'Ink',
  shade: 'Umber',
  kind: 'pigment',
  stockForm: 'container',
  volumeMicrolitres: 10_000,
  openedLife: null,
  archived: false,
  ...facts,
});
const needle = (id: string) =>
  product(id, { kind: 'cartridge', stockForm: 'pieces', volumeMicrolitres: null });

it('plans cartridges of one configuration together and shades one by one, and leaves out what concerns nobody', () => {
  const { items, leftOut } = plannedItems(
    [
      product('a'),
      product('b'),
      needle('c'),
      needle('d'),
      needle('e'),
      product('f', { volumeMicrolitres: null }),
    ],
    [
      { productIds: ['c', 'd'], poolKeys: ['key 1', 'key 2'] },
      { productIds: ['e'], poolKeys: [] },
    ],
    new Set(['a', 'd', 'e', 'f']),
  );
  expect(items.map(({ kind, key, unit, label }) => [kind, key, unit, label])).toEqual([
    ['configuration', 'key 1', 'pieces', 'key 1'],
    ['product', 'a', 'microlitres', 'Halden Ink Umber'],
    ['product', 'e', 'pieces', 'Halden Ink Umber'],
    ['product', 'f', 'pieces', 'Halden Ink Umber'],
  ]);
  expect(items[0]?.products.map(({ productId }) => productId)).toEqual(['c', 'd']);
  expect(items.slice(0, 2).map(({ keys }) => keys)).toEqual([['key 1', 'key 2'], ['a']]);
  expect(leftOut).toBe(1);
});

it('plans a configuration that only a kit list names', () => {
  const pools = [{ productIds: ['c'], poolKeys: ['key 1'] }];
  expect(plannedItems([needle('c')], pools, new Set(['key 1'])).items).toHaveLength(1);
});

import { expect, it } from 'vitest';
import { suggestedProducts } from './suggested-products.js';

const lot = (itemIndex: number | null, productId: string, shade: string | null = null) => ({
  itemIndex,
  productId,
  makerName: 'Halden',
  productName: 'Umber',
  shade,
});

it('names each product once whose lots an item meets, and none that another item meets', () => {
  const lots = [lot(0, 'a', 'Warm 02'), lot(0, 'a', 'Warm 02'), lot(1, 'b'), lot(null, 'c'), lot(0, 'd')];
  expect(suggestedProducts(lots, 0)).toEqual([
    { id: 'a', name: 'Halden Umber Warm 02' },
    { id: 'd', name: 'Halden Umber' },
  ]);
});

it('names at most four', () => {
  expect(
    suggestedProducts(
      ['a', 'b', 'c', 'd', 'e'].map((id) => lot(0, id)),
      0,
    ),
  ).toHaveLength(4);
});

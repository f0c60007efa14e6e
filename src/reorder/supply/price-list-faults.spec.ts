import { expect, it } from 'vitest';
import { priceListFaults } from './price-list-faults.js';

const price = (fromPacks: number, packPriceMinor: number) => ({ fromPacks, packPriceMinor });
const fieldsOf = (prices: ReturnType<typeof price>[], minimumPacks = 1) =>
  priceListFaults(prices, minimumPacks).map(({ field }) => field);

it.each([
  ['one price', [price(1, 500)], 1],
  ['nothing to pay', [price(1, 0)], 1],
  ['falling prices', [price(2, 500), price(10, 400), price(50, 0)], 2],
  ['equal prices', [price(1, 500), price(2, 500)], 1],
])('accepts %s', (_, prices, minimumPacks) => {
  expect(fieldsOf(prices, minimumPacks)).toEqual([]);
});

it.each([
  ['a first price that does not hold from the smallest order on', [price(1, 500)], 2, ['prices.0.fromPacks']],
  ['the same number of packs twice', [price(1, 500), price(1, 400)], 1, ['prices.1.fromPacks']],
  ['falling numbers of packs', [price(1, 500), price(9, 400), price(3, 300)], 1, ['prices.2.fromPacks']],
  ['a price that rises', [price(1, 500), price(5, 501)], 1, ['prices.1.packPriceMinor']],
])('refuses %s', (_, prices, minimumPacks, fields) => {
  expect(fieldsOf(prices, minimumPacks)).toEqual(fields);
});

it('says of each fault what was seen and what to do', () => {
  expect(priceListFaults([price(1, 500), price(5, 501)], 1)[0]?.message).toBe(
    'a pack would cost more from 5 packs on than from 1; compare the two prices with the offer',
  );
});

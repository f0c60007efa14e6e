import { expect, it } from 'vitest';
import { type ArrivedLine, orderArrivals } from './order-arrivals.js';

const line = (changes: Partial<ArrivedLine> = {}): ArrivedLine => ({
  deliveryId: 'delivery',
  orderId: 'order',
  supplierId: 'supplier',
  productId: 'umber',
  pieces: 2,
  orderedProductId: null,
  orderedOn: '2026-02-01',
  arrivedOn: '2026-02-05',
  ...changes,
});

it('counts a delivery once, with the pieces of all its lines', () => {
  expect(orderArrivals([line(), line({ productId: 'ochre' })], 'supplier')).toEqual([
    { orderId: 'order', orderedOn: '2026-02-01', arrivedOn: '2026-02-05', pieces: 4 },
  ]);
});

it('counts parts of an order, and orders that came together', () => {
  const parts = [line(), line({ deliveryId: 'rest', arrivedOn: '2026-02-20' })];
  expect(orderArrivals(parts, 'supplier').map(({ arrivedOn }) => arrivedOn)).toEqual([
    '2026-02-05',
    '2026-02-20',
  ]);
  const together = [line(), line({ orderId: 'other order', orderedOn: '2026-01-28' })];
  expect(orderArrivals(together, 'supplier')).toHaveLength(2);
});

it('passes over other suppliers, other products when one is asked for, and what nobody knows the order day of', () => {
  expect(orderArrivals([line()], 'other supplier')).toEqual([]);
  expect(orderArrivals([line()], 'supplier', 'ochre')).toEqual([]);
  expect(orderArrivals([line()], 'supplier', 'umber')).toHaveLength(1);
  expect(orderArrivals([line({ orderedOn: null })], 'supplier')).toEqual([]);
});

it('takes another product than was ordered for no arrival of the order', () => {
  expect(orderArrivals([line({ orderedProductId: 'ochre' })], 'supplier')).toEqual([]);
  const lines = [line({ orderedProductId: 'umber' }), line({ orderedProductId: 'ochre' })];
  expect(orderArrivals(lines, 'supplier')).toMatchObject([{ pieces: 2 }]);
});

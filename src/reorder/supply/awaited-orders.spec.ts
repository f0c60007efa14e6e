import { expect, it } from 'vitest';
import { type AwaitedLine, awaitedOrders } from './awaited-orders.js';

const line = (changes: Partial<AwaitedLine> = {}): AwaitedLine => ({
  orderId: 'order',
  supplierId: 'supplier',
  productId: 'umber',
  missingPieces: 2,
  orderedOn: '2026-02-01',
  today: '2026-02-20',
  ...changes,
});

it('counts an order once, with all that is missing of it', () => {
  const lines = [line(), line({ productId: 'ochre' }), line({ orderId: 'other', orderedOn: '2026-02-10' })];
  expect(awaitedOrders(lines, 'supplier')).toEqual([
    { orderId: 'order', orderedOn: '2026-02-01', today: '2026-02-20', missingPieces: 4 },
    { orderId: 'other', orderedOn: '2026-02-10', today: '2026-02-20', missingPieces: 2 },
  ]);
});

it('passes over other suppliers, and other products when one is asked for', () => {
  expect(awaitedOrders([line()], 'other supplier')).toEqual([]);
  expect(awaitedOrders([line()], 'supplier', 'ochre')).toEqual([]);
  expect(awaitedOrders([line(), line({ productId: 'ochre' })], 'supplier', 'umber')).toMatchObject([
    { missingPieces: 2 },
  ]);
});

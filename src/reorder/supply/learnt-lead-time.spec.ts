import { expect, it } from 'vitest';
import { leadTimeOfProduct, leadTimeOfSupplier } from './learnt-lead-time.js';

const order = { supplierId: 'supplier', orderedOn: '2026-02-01' };
const arrived = (orderId: string, productId: string, arrivedOn: string) => ({
  ...order,
  ...{ orderId, productId, arrivedOn, deliveryId: `delivery of ${orderId}`, pieces: 1 },
  orderedProductId: productId,
});
const record = {
  arrivals: [arrived('a', 'umber', '2026-02-04'), arrived('b', 'ochre', '2026-02-07')],
  awaited: [{ ...order, orderId: 'c', productId: 'ochre', missingPieces: 1, today: '2026-02-11' }],
};

it('learns of a supplier from all that came, and from all that is awaited', () => {
  expect(leadTimeOfSupplier(record, 'supplier', null)).toMatchObject({ orders: 3, days95: 10 });
  expect(leadTimeOfSupplier(record, 'other supplier', null)).toMatchObject({ basis: 'assumed', orders: 0 });
});

it('learns of a product with a lead time of its own from what asked for it', () => {
  expect(leadTimeOfProduct(record, 'supplier', 'ochre', 6)).toMatchObject({
    ...{ basis: 'quoted and learnt', quotedDays: 6, orders: 2, days95: 10 },
  });
  expect(leadTimeOfProduct(record, 'supplier', 'umber', 3)).toMatchObject({ orders: 1, days95: 3 });
});

import { describe, expect, it } from 'vitest';
import type { PurchaseOrderView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { changeOfOrder, draftOfOrder, packsOf, priceOf } from './order-draft.js';

const order = {
  currency: 'EUR',
  sums: { deliveryCostFrom: 'terms', deliveryCostMinor: 690 },
  lines: [
    { id: 'a', packs: 2, packPriceMinor: 1_900 },
    { id: 'b', packs: 1, packPriceMinor: null },
  ],
} as unknown as PurchaseOrderView;

describe('the draft of an order', () => {
  it('is written in the currency’s own units, with delivery left to the terms', () => {
    expect(draftOfOrder(order, 'de')).toEqual({
      delivery: '',
      [packsOf('a')]: '2',
      [priceOf('a')]: '19,00',
      [packsOf('b')]: '1',
      [priceOf('b')]: '',
    });
  });

  it('sends only what was written otherwise', () => {
    expect(changeOfOrder({}, order)).toEqual({ change: {} });
    expect(changeOfOrder({ [packsOf('a')]: '3', [priceOf('b')]: '2,5', delivery: '' }, order)).toEqual({
      change: {
        change: [
          { lineId: 'a', packs: 3 },
          { lineId: 'b', packPriceMinor: 250 },
        ],
        deliveryCostMinor: null,
      },
    });
  });

  it('names what is no number of packs', () => {
    for (const packs of ['', 'abc', '0', '1.5', '-1']) {
      expect(changeOfOrder({ [packsOf('a')]: packs }, order)).toEqual({ unreadable: [packsOf('a')] });
    }
  });

  it('names what is no amount', () => {
    expect(changeOfOrder({ [priceOf('a')]: 'ten', delivery: '1.234' }, order)).toEqual({
      unreadable: [priceOf('a'), 'delivery'],
    });
  });
});

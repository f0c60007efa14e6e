import { expect, it } from 'vitest';
import { dueBaskets } from './due-baskets.js';

const basket = (supplierId: string, on: string, ...productIds: string[]) => ({
  supplierId,
  supplierName: supplierId,
  on,
  productIds,
});

it('are the next of each supplier, the earliest first, without the products that were ordered since', () => {
  const baskets = [
    basket('quill', '2026-03-20', 'needle', 'foam'),
    basket('quill', '2026-03-09', 'umber'),
    basket('fjord', '2026-03-02', 'sand', 'thinner'),
    basket('pell', '2026-03-02', 'wax'),
    basket('none', '2026-03-01'),
  ];
  const due = (supplierId: string, on: string, lines: number) => ({
    ...{ supplierId, supplierName: supplierId, on, lines, planId: 'p' },
  });
  expect(dueBaskets(baskets, { id: 'p' }, ['wax', 'sand'])).toEqual([
    due('fjord', '2026-03-02', 1),
    due('quill', '2026-03-09', 1),
  ]);
  expect(dueBaskets(baskets, { id: 'p' }, ['wax', 'sand', 'thinner', 'umber'])).toEqual([
    due('quill', '2026-03-20', 2),
  ]);
});

import { expect, it } from 'vitest';
import { dueBaskets } from './due-baskets.js';

const basket = (supplierId: string, on: string, lines = 2) => ({
  supplierId,
  supplierName: supplierId,
  on,
  lines,
});

it('are the next of each supplier, the earliest first, without those of which an order was drafted', () => {
  const baskets = [
    basket('quill', '2026-03-20'),
    basket('quill', '2026-03-09', 1),
    basket('fjord', '2026-03-02'),
    basket('pell', '2026-03-02'),
    basket('none', '2026-03-01', 0),
  ];
  expect(dueBaskets(baskets, { id: 'p' }, ['pell'])).toEqual([
    { ...basket('fjord', '2026-03-02'), planId: 'p' },
    { ...basket('quill', '2026-03-09', 1), planId: 'p' },
  ]);
});

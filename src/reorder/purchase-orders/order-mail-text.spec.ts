import { expect, it } from 'vitest';
import { orderMailText } from './order-mail-text.js';
import { lineOfPaper, type PaperOfOrder } from './order-paper.js';

const line = {
  ...{ id: 'l', lineNumber: 2, productId: 'p', orderCode: 'PW-20', packs: 3, packContainers: 2 },
  ...{ containerPieces: 20, packPriceMinor: 3_000 },
};
const paper: PaperOfOrder = {
  number: 12,
  madeAt: '2026-02-26T10:00:00.000Z',
  day: '26 February 2026',
  studio: { name: 'Studio <Lerche> & Co', contact: '+43 660 0000000' },
  supplierName: 'Pellworm Supply',
  customerNumber: 'K-4711',
  isDraft: false,
  isCalledOff: false,
  currency: 'EUR',
  lines: [lineOfPaper(line, 'Halden Ink Liner', 'EUR')],
  linesSum: 'EUR 90.00',
  deliveryCost: null,
  total: null,
  unpricedLines: 0,
};

it('says who orders what, by the numbers both sides know', () => {
  const { subject, text } = orderMailText(paper, false);
  expect(subject).toBe('Order 12 – Studio <Lerche> & Co');
  expect(text).toContain('2. 3 × PW-20 Halden Ink Liner (2 boxes of 20): EUR 90.00');
  expect(text).toContain('Our customer number with you: K-4711');
  expect(text).not.toContain('Total');
  expect(text).not.toContain('reached you before');
});

it('says that it may be there already when an attempt was cut off', () => {
  expect(orderMailText(paper, true).text).toContain('the same order, number 12, and not a further one');
});

it('runs nothing of what names hold', () => {
  const { html } = orderMailText({ ...paper, supplierName: '<img src=x onerror=alert(1)>' }, false);
  expect(html).toContain('&lt;img src=x');
  expect(html).not.toContain('<img');
  expect(html).toContain('Studio &lt;Lerche&gt; &amp; Co');
});

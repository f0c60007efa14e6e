import { expect, it } from 'vitest';
import { itemFacts, offerOf, sealed } from '../../../tests/support/planning-samples.js';
import { decideItem } from '../decision/item-decision.js';
import type { PlannedOrder } from '../decision/item-decision-result.js';
import { followedDecision } from './followed-decision.js';

const own = decideItem(itemFacts({ batches: [sealed(10, 1)], offers: [offerOf()] }));
const order: PlannedOrder = {
  ...{ offerId: 'first', productId: 'p', supplierId: 's', packs: 9, containers: 9, units: 90 },
  ...{ packPriceMinor: 100, priceMinor: 900, on: '2026-12-01' },
  arrival: { likely: '2026-12-04', late: '2026-12-06' },
};
const followed = {
  order: { offerId: 'first', packs: 9, day: 5 },
  after: { ...own.after, coverDays: 100, shortChance: 0.25 },
  fan: null,
};
const codes = (reasons: readonly { code: string }[]) => reasons.map(({ code }) => code);

it('says of an order that a basket changed what is ordered, and how long that lasts', () => {
  const decision = followedDecision(own, order, followed, '2026-11-26');
  expect(decision.after).toBe(followed.after);
  expect(codes(decision.reasons)).toEqual(codes(own.reasons));
  expect(decision.reasons).toContainEqual({
    ...{ code: 'order', packs: 9, containers: 9, units: 90, on: '2026-12-01', priceMinor: 900 },
  });
  expect(decision.reasons).toContainEqual({
    ...{ code: 'covers', days: 100, until: '2027-03-06', chanceAfter: 0.25 },
  });
});

it('says it also of what nothing would be ordered of by itself, before what is compared', () => {
  const reasons = own.reasons.filter(({ code }) => code !== 'order' && code !== 'covers');
  const said = codes(followedDecision({ ...own, reasons }, order, followed, '2026-11-26').reasons);
  expect(said.indexOf('covers')).toBe(said.indexOf('order') + 1);
  expect(said.findIndex((code) => code.startsWith('why not '))).toBe(said.indexOf('covers') + 1);
});

it('says of an order that stayed as it was what was found of it', () => {
  const { order: unchanged } = own;
  if (unchanged === null) throw new Error('Nothing was ordered.');
  expect(followedDecision(own, unchanged, null, '2026-11-26')).toEqual(own);
});

import { describe, expect, it } from 'vitest';
import { itemFacts, offerOf, sealed } from '../../../tests/support/planning-samples.js';
import { decideItem } from './item-decision.js';
import { followedPolicy, orderOutlook } from './order-outlook.js';

// Some days are left: the order is not one of today, for which waiting is weighed as well.
const facts = itemFacts({ batches: [sealed(30, 1)], offers: [offerOf()] });
const decided = decideItem(facts);
const { policy } = decided;

describe('an order of an item', () => {
  it('is expected to go as its own, when it is its own', () => {
    if (policy === null || policy.first === null) throw new Error('Nothing is ordered.');
    expect(policy.first.day).toBeGreaterThan(0);
    const order = { offerId: policy.offerId, ...policy.first };
    expect(followedPolicy(decided, order)).toEqual({
      first: policy.first,
      reorderPointUnits: policy.reorderPointUnits,
      packs: policy.packs,
    });
    expect(orderOutlook(facts, decided, order)).toEqual(decided.after);
  });

  it('is followed by no other where the item has no reorder point', () => {
    const order = { offerId: 'first', packs: 2, day: 3 };
    expect(followedPolicy({ reorderPoint: null }, order)).toEqual({
      ...{ first: { packs: 2, day: 3 }, reorderPointUnits: null, packs: 0 },
    });
  });
});

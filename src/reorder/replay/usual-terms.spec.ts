import { describe, expect, it } from 'vitest';
import type { PlanOffer } from '../plan/item-line.js';
import { NEVER } from '../projection/item-facts.js';
import { cheapestOffer, usualTerms } from './usual-terms.js';

const offer = (more: Partial<PlanOffer> = {}): PlanOffer => ({
  ...{
    offerId: 'a',
    productId: 'umber',
    supplierId: 'quill',
    packContainers: 2,
    unitsEach: 10,
    minimumPacks: 3,
  },
  prices: [
    { fromPacks: 1, packPriceMinor: 1_000 },
    { fromPacks: 3, packPriceMinor: 800 },
  ],
  leadTime: { days: [3, 5, 9], weights: [0.25, 0.5, 0.25] },
  ...{ orderWeekdays: [], lifeDays: NEVER, deliveryCostMinor: 600, linesPerDelivery: 3 },
  ...more,
});
const settings = {
  ...{ serviceTargetPerMille: 950, shortageCostMinor: null, orderCostMinor: 100 },
  ...{ holdingPerYearPerMille: 365, rangeChoice: null },
};

describe('how an item is had throughout a replay', () => {
  it('by the offer whose units cost least at its smallest order', () => {
    const dear = offer({ offerId: 'b', minimumPacks: 1 });
    expect(cheapestOffer([dear, offer()])?.offerId).toBe('a');
    expect(cheapestOffer([offer({ prices: [] })])).toBeUndefined();
  });

  it('with the middle lead time, a share of the delivery, and keeping by its price', () => {
    expect(usualTerms(offer(), settings, 7)).toEqual({
      ...{ packContainers: 2, unitsEach: 10, packMinor: 800, leadTimeDays: 5, lifeDays: NEVER },
      ...{ orderMinor: 300, shortageMinor: 0, holdingMinorPerUnitDay: 0.04, reviewEveryDays: 7 },
    });
  });
});

import { describe, expect, it } from 'vitest';
import { itemFacts, offerOf, sealed } from '../../../tests/support/planning-samples.js';
import { decideItem } from './item-decision.js';
import { offerWithinBounds, settingsWithinBounds } from './settings-within-bounds.js';

const settings = {
  serviceTargetPerMille: 950,
  shortageCostMinor: null,
  orderCostMinor: 12.5,
  holdingPerYearPerMille: 100,
  rangeChoice: null,
};

describe('settings', () => {
  it('stand as they are, without a word, when they can be reckoned with', () => {
    expect(settingsWithinBounds(settings)).toEqual({ settings, assumptions: [] });
    const offer = { ...offerOf({ minimumPacks: 3 }), linesPerDelivery: 2.4 };
    expect(offerWithinBounds(offer)).toEqual({ offer, assumptions: [] });
  });

  it('come to the nearer edge, or to what is usual when they are no number, and it is said', () => {
    const { settings: taken, assumptions } = settingsWithinBounds({
      ...settings,
      serviceTargetPerMille: Number.NaN,
      shortageCostMinor: 1e18,
      holdingPerYearPerMille: -1,
    });
    expect(taken).toEqual({
      ...settings,
      serviceTargetPerMille: 950,
      shortageCostMinor: 1_000_000_000,
      holdingPerYearPerMille: 0,
    });
    const code = 'setting out of range';
    expect(assumptions).toEqual([
      { code, setting: 'serviceTargetPerMille', given: 0, taken: 950 },
      { code, setting: 'shortageCostMinor', given: 1e18, taken: 1_000_000_000 },
      { code, setting: 'holdingPerYearPerMille', given: -1, taken: 0 },
    ]);
  });
});

describe('an absurd offer', () => {
  const absurd = {
    ...offerOf({
      ...{ packContainers: 1e9, unitsEach: 1e12, minimumPacks: 1e9 },
      prices: [{ fromPacks: Number.NaN, packPriceMinor: -50 }],
    }),
    ...{ deliveryCostMinor: Number.POSITIVE_INFINITY, linesPerDelivery: 0 },
  };

  it('is one that fits what is counted, and each figure that was changed is named', () => {
    const { offer, assumptions } = offerWithinBounds(absurd);
    const { packContainers, minimumPacks, unitsEach } = offer.replenishment;
    expect({ packContainers, minimumPacks, unitsEach }).toEqual({
      packContainers: 100_000,
      minimumPacks: 10_000,
      unitsEach: 1_000_000_000,
    });
    expect(assumptions.map((each) => 'setting' in each && each.setting).sort()).toEqual([
      'deliveryCostMinor',
      'fromPacks',
      'linesPerDelivery',
      'minimumPacks',
      'packContainers',
      'packPriceMinor',
      'unitsEach',
    ]);
  });

  it('is decided on all the same', () => {
    const decision = decideItem(
      itemFacts({
        usesPerWeek: 5,
        days: 120,
        horizonDays: 60,
        paths: 60,
        batches: [sealed(3, 1)],
        offers: [absurd],
      }),
    );
    expect(Number.isFinite(decision.costs.chosen.totalMinor)).toBe(true);
    expect(decision.assumptions.filter(({ code }) => code === 'setting out of range')).toHaveLength(7);
  });
});

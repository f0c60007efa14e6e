import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemFacts, offerOf, sealed } from '../../../tests/support/planning-samples.js';
import { planBaskets, sharesOf } from './basket.js';
import type { BasketItem, BasketTerms } from './basket-result.js';
import { decideItem } from './item-decision.js';
import { dateOfDay } from './plan-days.js';

const today = '2026-11-26';
const day = (count: number) => dateOfDay(today, count);

const terms: BasketTerms = {
  supplierId: 'supplier',
  minimumOrderMinor: null,
  deliveryCostMinor: 900,
  freeDeliveryFromMinor: null,
};

/** Due on a day; each day earlier costs so much more, and each pack more. */
function item(
  key: string,
  on: number | null,
  { packs = 2, priceMinor = 1_000, perDay = 20, perPack = 100, fixed = false, own = on ?? 60 } = {},
): BasketItem {
  return {
    key,
    on: on === null ? null : day(on),
    fixed,
    figures: {
      offerId: `offer-${key}`,
      productId: `product-${key}`,
      supplierId: 'supplier',
      packs,
      packPrices: [{ fromPacks: 1, packPriceMinor: priceMinor }],
      days:
        own === 0
          ? [{ on: day(0), extraMinor: 0 }]
          : [
              { on: day(0), extraMinor: own * perDay },
              { on: day(own), extraMinor: 0 },
            ],
      laterDays: [{ on: day(own + 10), extraMinor: 10 * perDay * 3 }],
      morePacks: [1, 2, 3, 4].map((more) => ({ packs: packs + more, extraMinor: perPack * more * more })),
    },
  };
}

describe('a basket', () => {
  it('holds what is due on one day with one supplier, with the delivery shared by price', () => {
    const [basket, ...others] = planBaskets(
      [terms],
      [item('a', 0, { priceMinor: 1_000 }), item('b', 0, { priceMinor: 2_000 })],
    );
    expect(others).toEqual([]);
    expect(basket).toMatchObject({ on: today, goodsMinor: 6_000, deliveryMinor: 900, totalMinor: 6_900 });
    expect(
      basket?.lines.map(({ key, deliveryShareMinor, reasons }) => [key, deliveryShareMinor, reasons]),
    ).toEqual([
      ['a', 300, ['due']],
      ['b', 600, ['due']],
    ]);
  });

  it('takes in what is due soon when that costs less than the delivery it spares', () => {
    const baskets = planBaskets([terms], [item('a', 0), item('soon', 5), item('late', 15, { perDay: 100 })]);
    expect(baskets.map(({ on, lines }) => [on, lines.map(({ key }) => key)])).toEqual([
      [today, ['a', 'soon']],
      [day(15), ['late']],
    ]);
    expect(baskets[0]?.lines[1]).toMatchObject({
      reasons: ['shares the delivery'],
      extraMinor: 100,
      sparedMinor: 900,
      ownOn: day(5),
    });
  });

  it('takes in all lines of a later day, or none: one that stayed would pay for the delivery alone', () => {
    const baskets = planBaskets([terms], [item('a', 0), item('b', 5), item('c', 5, { perDay: 200 })]);
    expect(baskets.map(({ lines }) => lines.map(({ key }) => key))).toEqual([['a'], ['b', 'c']]);
  });

  it('neither moves nor enlarges what is ordered for an appointment', () => {
    const baskets = planBaskets(
      [{ ...terms, minimumOrderMinor: 2_500 }],
      [item('a', 0, { packs: 1, fixed: true }), item('b', 3, { fixed: true })],
    );
    expect(baskets.map(({ on }) => on)).toEqual([today, day(3)]);
    expect(baskets[0]?.minimum).toMatchObject({ state: 'not reached', missingMinor: 1_500 });
    expect(baskets[0]?.minimum.choices).toEqual([
      { choice: 'order anyway', goodsMinor: 1_000, missingMinor: 1_500 },
    ]);
  });

  it('reaches the minimum by what costs least', () => {
    const [basket] = planBaskets(
      [{ ...terms, minimumOrderMinor: 4_000 }],
      [item('a', 0, { perPack: 50 }), item('dear', null, { perDay: 100 })],
    );
    expect(basket?.minimum).toMatchObject({ state: 'reached by adding', missingMinor: 0 });
    expect(basket?.lines).toHaveLength(1);
    expect(basket?.lines[0]).toMatchObject({ packs: 4, ownPacks: 2, extraMinor: 200 });
    expect(basket?.lines[0]?.reasons).toEqual(['due', 'reaches the minimum']);
  });

  it('reaches it by a line that is not due where packs more would only expire', () => {
    const [basket] = planBaskets(
      [{ ...terms, minimumOrderMinor: 4_000 }],
      [item('a', 0, { perPack: 900 }), item('spare', null, { perDay: 2 })],
    );
    expect(basket?.lines.map(({ key, ownPacks, reasons }) => [key, ownPacks, reasons])).toEqual([
      ['a', 2, ['due']],
      ['spare', 0, ['reaches the minimum']],
    ]);
  });

  it('says what can be done when waiting costs less than adding', () => {
    const [basket] = planBaskets(
      [{ ...terms, minimumOrderMinor: 6_000, deliveryCostMinor: 0 }],
      [
        item('a', 0, { perPack: 5_000, perDay: 1 }),
        item('b', 8, { packs: 4, perPack: 5_000, perDay: 1_000 }),
      ],
    );
    expect(basket?.minimum.state).toBe('not reached');
    expect(basket?.minimum.choices.map(({ choice }) => choice)).toContain('wait');
    expect(basket?.minimum.choices).toContainEqual({ choice: 'wait', until: day(8), extraMinor: 24 });
  });

  it('says that the minimum cannot be reached', () => {
    const [basket] = planBaskets([{ ...terms, minimumOrderMinor: 1_000_000 }], [item('a', 0)]);
    expect(basket?.minimum).toEqual({
      state: 'not reached',
      minimumMinor: 1_000_000,
      missingMinor: 998_000,
      choices: [{ choice: 'order anyway', goodsMinor: 2_000, missingMinor: 998_000 }],
    });
  });

  it('reaches free delivery only where that costs less than the delivery', () => {
    const free = { ...terms, freeDeliveryFromMinor: 3_000 };
    const [saves] = planBaskets([free], [item('a', 0, { perPack: 100 })]);
    expect(saves).toMatchObject({ deliveryMinor: 0, goodsMinor: 3_000, freeDelivery: { reached: true } });
    expect(saves?.lines[0]?.reasons).toEqual(['due', 'reaches free delivery']);
    const [pays] = planBaskets([free], [item('a', 0, { perPack: 1_000 })]);
    expect(pays).toMatchObject({ deliveryMinor: 900, goodsMinor: 2_000 });
    expect(pays?.freeDelivery).toEqual({ fromMinor: 3_000, reached: false, missingMinor: 1_000 });
  });

  it('keeps suppliers apart and puts baskets by day', () => {
    const other = item('z', 0);
    const baskets = planBaskets(
      [terms, { ...terms, supplierId: 'other' }],
      [item('a', 30), { ...other, figures: { ...other.figures, supplierId: 'other' } }],
    );
    expect(baskets.map(({ supplierId, on }) => [supplierId, on])).toEqual([
      ['other', today],
      ['supplier', day(30)],
    ]);
  });

  it('is made of decisions as they come', () => {
    const due = decideItem(itemFacts({ usesPerWeek: 21, batches: [sealed(10, 1)] }));
    const later = decideItem(itemFacts({ usesPerWeek: 7, batches: [sealed(20, 1)], offers: [offerOf()] }));
    const items = [due, later].flatMap(({ basketFigures, order }, index) =>
      basketFigures === null
        ? []
        : [{ key: `${index}`, figures: basketFigures, on: order?.on ?? null, fixed: false }],
    );
    expect(items).toHaveLength(2);
    const baskets = planBaskets(
      [{ ...terms, supplierId: 'supplier-first', deliveryCostMinor: 50_000 }],
      items,
    );
    expect(baskets).toHaveLength(1);
    expect(baskets[0]?.lines.map(({ reasons }) => reasons[0])).toEqual(['due', 'shares the delivery']);
  });

  it('holds every due line once, in whole amounts that add up', () => {
    const anItem = fc.record({
      on: fc.option(fc.integer({ min: 0, max: 40 }), { nil: null }),
      packs: fc.integer({ min: 1, max: 6 }),
      priceMinor: fc.integer({ min: 0, max: 5_000 }),
      perDay: fc.integer({ min: 0, max: 60 }),
      perPack: fc.integer({ min: 0, max: 900 }),
      fixed: fc.boolean(),
    });
    fc.assert(
      fc.property(
        fc.array(anItem, { maxLength: 8 }),
        fc.option(fc.integer({ min: 0, max: 30_000 }), { nil: null }),
        fc.option(fc.integer({ min: 0, max: 30_000 }), { nil: null }),
        fc.integer({ min: 0, max: 2_000 }),
        (given, minimumOrderMinor, freeDeliveryFromMinor, deliveryCostMinor) => {
          const items = given.map(({ on, ...rest }, index) => item(`${index}`, on, rest));
          const baskets = planBaskets(
            [{ ...terms, minimumOrderMinor, freeDeliveryFromMinor, deliveryCostMinor }],
            items,
          );
          const keys = baskets.flatMap(({ lines }) => lines.map(({ key }) => key));
          expect(new Set(keys).size).toBe(keys.length);
          for (const { key, on } of items) if (on !== null) expect(keys).toContain(key);
          for (const { lines, goodsMinor, deliveryMinor, minimum } of baskets) {
            let prices = 0;
            let shares = 0;
            for (const line of lines) {
              prices += line.priceMinor;
              shares += line.deliveryShareMinor;
              expect(line.packs).toBeGreaterThanOrEqual(Math.max(1, line.ownPacks));
              expect(line.reasons.length).toBeGreaterThan(0);
            }
            expect(prices).toBe(goodsMinor);
            expect(shares).toBe(deliveryMinor);
            if (minimum.state.startsWith('reached')) {
              expect(goodsMinor).toBeGreaterThanOrEqual(minimumOrderMinor ?? 0);
            }
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});

it('splits an amount into whole parts that add up to it', () => {
  expect(sharesOf(100, [1, 1, 1])).toEqual([34, 33, 33]);
  expect(sharesOf(7, [0, 0])).toEqual([4, 3]);
  expect(sharesOf(900, [])).toEqual([]);
});

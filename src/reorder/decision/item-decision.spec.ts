import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  itemFacts,
  offerOf,
  orderDaysEvery,
  type SampleItem,
  sealed,
} from '../../../tests/support/planning-samples.js';
import { NEVER } from '../projection/item-facts.js';
import type { DecisionNote } from './decision-notes.js';
import { decideItem } from './item-decision.js';
import type { ItemDecision } from './item-decision-result.js';

const decide = (sample: SampleItem) => decideItem(itemFacts(sample));
const noteOf = <Code extends DecisionNote['code']>({ notes }: ItemDecision, code: Code) =>
  notes.find((note): note is Extract<DecisionNote, { code: Code }> => note.code === code);

/** Every number anywhere inside. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(numbersIn);
}

describe('a needle used every day', () => {
  it('is ordered now when it runs short before a delivery', () => {
    const decision = decide({ usesPerWeek: 21, batches: [sealed(20, 1)] });
    expect(decision.decision).toBe('order now');
    expect(decision.order).toMatchObject({ on: '2026-11-26', offerId: 'offer-first' });
    expect(decision.order?.arrival).toEqual({ likely: '2026-12-01', late: '2026-12-04' });
    expect(decision.without.shortChance).toBeGreaterThan(0.99);
    expect(decision.after.expectedUnmetUnits).toBeLessThan(decision.without.expectedUnmetUnits / 10);
    expect(decision.range).toBeNull();
  });

  it('is ordered later when there is time, and no neighbour would cost less', () => {
    const decision = decide({ usesPerWeek: 21, batches: [sealed(70, 1)], paths: 2_000 });
    expect(decision.decision).toBe('order later');
    const { chosen, neighbours, nothing } = decision.costs;
    expect(neighbours).toHaveLength(4);
    for (const { cost } of neighbours)
      expect(cost.totalMinor).toBeGreaterThanOrEqual(chosen.totalMinor - 1e-3);
    expect(nothing.totalMinor).toBeGreaterThan(chosen.totalMinor);
    expect(decision.effort.candidates).toBeGreaterThan(30);
  });

  it('is enough when it lasts long beyond what is announced', () => {
    const decision = decide({ usesPerWeek: 3, batches: [sealed(400, 1)] });
    expect(decision).toMatchObject({ decision: 'enough', order: null });
    expect(decision.reorderPoint?.units).toBeGreaterThan(0);
  });

  it('joins the basket of others at what the order costs more than none, where none is needed', () => {
    // Of 30 pieces that keep for 200 days hardly any are needed: a box more is thrown away whole.
    const offers = [offerOf({ lifeDays: 200, prices: [{ fromPacks: 1, packPriceMinor: 2_000 }] })];
    const seldom = { usesPerWeek: 0.3, days: 300, batches: [sealed(30, 1, 200)], offers };
    const { decision, order, basketFigures } = decide({
      ...seldom,
      settings: { rangeChoice: 'keep in stock' },
    });
    expect({ decision, order }).toEqual({ decision: 'enough', order: null });
    expect(basketFigures?.days[0]).toMatchObject({ on: '2026-11-26' });
    expect(basketFigures?.days[0]?.extraMinor).toBeGreaterThan(1_900);
  });

  it('meets the target until the order is here: one of twenty, or nearly', () => {
    const decision = decide({ usesPerWeek: 14, batches: [sealed(40, 1)], paths: 2_000, days: 300 });
    expect(decision.after.shortChance).toBeLessThan(0.12);
  });

  it('takes the sum of its parts as its cost', () => {
    const { chosen } = decide({ usesPerWeek: 14, batches: [sealed(30, 1)] }).costs;
    const { totalMinor, standardErrorMinor, ...parts } = chosen;
    const sum = Object.values(parts).reduce((total, part) => total + part, 0);
    expect(sum).toBeCloseTo(totalMinor, 2);
    expect(standardErrorMinor).toBeGreaterThan(0);
  });

  it('is decided the same again, whatever was decided in between', () => {
    const first = decide({ usesPerWeek: 14, batches: [sealed(30, 1)] });
    decide({ usesPerWeek: 2 });
    expect(decide({ usesPerWeek: 14, batches: [sealed(30, 1)] })).toEqual(first);
  });
});

describe('several offers', () => {
  it('takes the one with the least expected cost, and shows the others', () => {
    const dear = offerOf({ prices: [{ fromPacks: 1, packPriceMinor: 4_500 }] }, 'dear');
    const cheap = offerOf({ prices: [{ fromPacks: 1, packPriceMinor: 2_800 }] }, 'cheap');
    const decision = decide({ usesPerWeek: 14, batches: [sealed(5, 1)], offers: [dear, cheap] });
    expect(decision.order?.offerId).toBe('offer-cheap');
    expect(decision.offers.map(({ offerId }) => offerId)).toEqual(['offer-cheap', 'offer-dear']);
    const [first, second] = decision.offers;
    expect(first?.expectedCostMinor).toBeLessThan(second?.expectedCostMinor ?? 0);
  });

  it('pays more for what is here in time', () => {
    const slow = offerOf({ leadTime: { days: [28], weights: [1] } }, 'slow');
    const fast = offerOf(
      { leadTime: { days: [1], weights: [1] }, prices: [{ fromPacks: 1, packPriceMinor: 3_050 }] },
      'fast',
    );
    const decision = decide({
      usesPerWeek: 14,
      batches: [sealed(3, 1)],
      offers: [slow, fast],
      settings: { shortageCostMinor: 5_000 },
    });
    expect(decision.order?.offerId).toBe('offer-fast');
  });
});

describe('what is worth a note', () => {
  it('a pack that exceeds the need in date, with figures', () => {
    const decision = decide({
      unit: 'microlitres',
      usesPerWeek: 0.3,
      amounts: { amounts: [500], weights: [1] },
      days: 730,
      openedLifeDays: 180,
      offers: [
        offerOf({
          packContainers: 1,
          unitsEach: 15_000,
          lifeDays: 700,
          prices: [{ fromPacks: 1, packPriceMinor: 3_900 }],
        }),
      ],
    });
    const note = noteOf(decision, 'pack exceeds need');
    expect(note?.packUnits).toBe(15_000);
    expect((note?.inDateNeedUnits ?? 0) + (note?.expectedWasteUnits ?? 0)).toBeCloseTo(15_000, 1);
    // 7.7 uses in half a year, and one on the day it is opened.
    expect(note?.inDateNeedUnits).toBeGreaterThan(3_000);
    expect(note?.inDateNeedUnits).toBeLessThan(6_000);
  });

  it('a price break that is taken', () => {
    const prices = [
      { fromPacks: 1, packPriceMinor: 3_000 },
      { fromPacks: 5, packPriceMinor: 2_400 },
    ];
    const decision = decide({ usesPerWeek: 14, batches: [sealed(5, 1)], offers: [offerOf({ prices })] });
    expect(decision.order?.packs).toBeGreaterThanOrEqual(5);
    expect(noteOf(decision, 'price break taken')?.savedMinor).toBe(600 * (decision.order?.packs ?? 0));
  });

  it('a minimum that is more than would be ordered', () => {
    const decision = decide({
      usesPerWeek: 7,
      batches: [sealed(3, 1)],
      settings: { orderCostMinor: 0, holdingPerYearPerMille: 900 },
      offers: [{ ...offerOf({ minimumPacks: 30 }), deliveryCostMinor: 0 }],
    });
    expect(decision.order?.packs).toBe(30);
    expect(noteOf(decision, 'minimum packs forced')).toEqual({
      code: 'minimum packs forced',
      minimumPacks: 30,
    });
  });

  it('an order that comes too late', () => {
    const decision = decide({ usesPerWeek: 14, batches: [sealed(2, 1)] });
    expect(decision.decision).toBe('order now');
    expect(noteOf(decision, 'too late')?.shortChance).toBeGreaterThan(0.9);
  });

  it('what is missing until the delivery on the way is here, which no order is in time for: nothing is ordered again', () => {
    const brows = {
      ...{ unit: 'microlitres' as const, usesPerWeek: 4, days: 300, openedLifeDays: 180 },
      amounts: { amounts: [200], weights: [1] },
      offers: [offerOf({ packContainers: 1, unitsEach: 10_000, leadTime: { days: [4], weights: [1] } })],
    };
    const arrival = { days: [4], weights: [1] };
    const onTheWay = [{ containers: 5, unitsEach: 10_000, arrival, lifeDays: 700, costEachMinor: null }];
    expect(decide(brows).decision).toBe('order now');
    const again = decide({ ...brows, onTheWay });
    expect(again.without.shortChance).toBeGreaterThan(0.8);
    expect(again).toMatchObject({ decision: 'enough', order: null });
    expect(noteOf(again, 'no order in time')).toBeDefined();
    expect(again.reorderPoint).not.toBeNull();
  });

  it('what lies on hold, and counts for nothing', () => {
    const decision = decide({ usesPerWeek: 14, onHoldUnits: 200 });
    expect(noteOf(decision, 'on hold ignored')).toEqual({ code: 'on hold ignored', units: 200 });
    expect(decision.decision).toBe('order now');
    expect(decision.reasons).toContainEqual({ code: 'on hold', units: 200 });
  });
});

describe('edge cases', () => {
  it('nothing is ordered of what nobody needs', () => {
    const decision = decide({ usesPerWeek: 0, batches: [sealed(3, 1)] });
    expect(decision).toMatchObject({ decision: 'let run out', order: null });
    expect(noteOf(decision, 'no need')).toBeDefined();
  });

  it('one use ever does not empty the purse', () => {
    const decision = decide({ usesPerWeek: 1 / 104, days: 730, batches: [] });
    expect(decision.order?.packs ?? 0).toBeLessThanOrEqual(1);
  });

  it('no lead time: ordered on the day it is needed at the latest', () => {
    const decision = decide({
      usesPerWeek: 14,
      batches: [sealed(30, 1)],
      offers: [offerOf({ leadTime: { days: [0], weights: [1] } })],
    });
    expect(decision.decision).toBe('order later');
    expect(decision.after.shortChance).toBeLessThan(0.2);
    expect((decision.order?.on ?? '') > '2026-12-04').toBe(true);
  });

  it('a lead time beyond the life of what comes', () => {
    const decision = decide({
      usesPerWeek: 7,
      days: 300,
      offers: [offerOf({ leadTime: { days: [40], weights: [1] }, lifeDays: 10, packContainers: 1 })],
    });
    expect(noteOf(decision, 'lead time beyond life')).toEqual({
      code: 'lead time beyond life',
      leadTimeDays: 40,
      lifeDays: 10,
    });
  });

  it('a lead time beyond the horizon is still seen', () => {
    const decision = decide({
      usesPerWeek: 7,
      days: 400,
      offers: [offerOf({ leadTime: { days: [130], weights: [1] } })],
      batches: [sealed(20, 1)],
    });
    expect(decision.decision).toBe('order now');
    expect(decision.effort.horizonDays).toBeGreaterThan(260);
  });

  it('what expires before anything arrives, and then keeps no day', () => {
    const decision = decide({ usesPerWeek: 7, offers: [offerOf({ lifeDays: -1, packContainers: 1 })] });
    expect(noteOf(decision, 'nothing fits the date')).toBeDefined();
    expect(['let run out', 'enough']).toContain(decision.decision);
  });

  it('no offer: it cannot be ordered, or there is enough', () => {
    const short = decide({ usesPerWeek: 7, offers: [], batches: [sealed(5, 1)] });
    expect(short).toMatchObject({ decision: 'cannot be ordered', order: null, policy: null });
    expect(noteOf(short, 'no offer')).toBeDefined();
    expect(decide({ usesPerWeek: 1, offers: [], batches: [sealed(500, 1)] }).decision).toBe('enough');
  });

  it('an offer without an order day cannot be ordered either', () => {
    const decision = decide({
      usesPerWeek: 7,
      offers: [offerOf({ nextOrderDay: new Int32Array(400).fill(NEVER) })],
    });
    expect(decision.decision).toBe('cannot be ordered');
    expect(noteOf(decision, 'no order day')?.until).toBe('2027-03-25');
  });

  it('a target of 0 %: nothing is worth ordering', () => {
    const decision = decide({ usesPerWeek: 7, settings: { serviceTargetPerMille: 0 } });
    expect(decision).toMatchObject({ decision: 'let run out', order: null });
    expect(decision.shortage.minorPerUnit).toBe(0);
    expect(noteOf(decision, 'target of zero')).toBeDefined();
  });

  it('a target of 100 %: the largest need drawn is covered, and it is said', () => {
    const decision = decide({
      usesPerWeek: 7,
      settings: { serviceTargetPerMille: 1_000 },
      batches: [sealed(12, 1)],
    });
    expect(decision.order?.packs).toBeLessThan(60);
    const usual = decide({ usesPerWeek: 7, batches: [sealed(12, 1)] });
    expect(noteOf(decision, 'full target bounded')).toMatchObject({ paths: 600 });
    expect(decision.reorderPoint?.units).toBeGreaterThan(usual.reorderPoint?.units ?? 0);
    expect(decision.after.expectedUnmetUnits).toBeLessThanOrEqual(usual.after.expectedUnmetUnits);
  });

  it('settings out of range are brought to their edge, and each is said', () => {
    const decision = decide({
      usesPerWeek: 7,
      settings: { serviceTargetPerMille: 4_000, orderCostMinor: -5, holdingPerYearPerMille: Number.NaN },
    });
    expect(decision.assumptions.filter(({ code }) => code === 'setting out of range')).toEqual([
      { code: 'setting out of range', setting: 'serviceTargetPerMille', given: 4_000, taken: 1_000 },
      { code: 'setting out of range', setting: 'orderCostMinor', given: -5, taken: 0 },
      { code: 'setting out of range', setting: 'holdingPerYearPerMille', given: 0, taken: 0 },
    ]);
  });

  it('only days on which the supplier takes orders', () => {
    const decision = decide({
      usesPerWeek: 14,
      batches: [sealed(30, 1)],
      offers: [offerOf({ nextOrderDay: orderDaysEvery(7, 4) })],
    });
    // Mondays: 2026-11-30 is day 4.
    expect(['2026-11-30', '2026-12-07']).toContain(decision.order?.on);
    expect(decision.decision).toBe('order later');
  });

  it('a more expensive missing unit never leaves more missing', () => {
    let before = Number.POSITIVE_INFINITY;
    for (const shortageCostMinor of [50, 500, 5_000, 50_000]) {
      const { after } = decide({
        usesPerWeek: 10,
        batches: [sealed(20, 1)],
        settings: { shortageCostMinor },
        paths: 1_000,
      });
      expect(after.expectedUnmetUnits).toBeLessThanOrEqual(before + 0.02);
      before = after.expectedUnmetUnits;
    }
  });

  it('holds only finite figures and dates, whatever it is given', () => {
    fc.assert(
      fc.property(
        fc.record({
          usesPerWeek: fc.constantFrom(0, 0.02, 0.5, 7, 40),
          dispersion: fc.constantFrom(1, 3),
          openedLifeDays: fc.constantFrom(0, 30, NEVER),
          horizonDays: fc.constantFrom(1, 14, 60),
          onHoldUnits: fc.constantFrom(0, 5),
          batches: fc.array(
            fc.record({
              containers: fc.integer({ min: 0, max: 40 }),
              unitsEach: fc.constantFrom(0, 1, 700),
              lastDay: fc.constantFrom(-3, 0, 20, NEVER),
              opened: fc.boolean(),
              costEachMinor: fc.constantFrom(null, 0, 150),
            }),
            { maxLength: 3 },
          ),
          settings: fc.record({
            serviceTargetPerMille: fc.constantFrom(-1, 0, 500, 950, 1_000, Number.NaN),
            shortageCostMinor: fc.constantFrom(null, -1, 0, 9_000, Number.POSITIVE_INFINITY),
            orderCostMinor: fc.constantFrom(0, 500, Number.POSITIVE_INFINITY),
            holdingPerYearPerMille: fc.constantFrom(0, 100, 1e9),
            rangeChoice: fc.constantFrom(
              null,
              'keep in stock' as const,
              'order for the appointment' as const,
              'let run out' as const,
            ),
          }),
          offers: fc.array(
            fc
              .record({
                packContainers: fc.constantFrom(0, 1, 20),
                unitsEach: fc.constantFrom(1, 5_000),
                minimumPacks: fc.constantFrom(0, 1, 50),
                lifeDays: fc.constantFrom(-5, 0, 5, 90, NEVER),
                leadTime: fc.constantFrom(
                  { days: [0], weights: [1] },
                  { days: [2, 9], weights: [0.5, 0.5] },
                  { days: [400], weights: [1] },
                ),
                prices: fc.constantFrom(
                  [],
                  [{ fromPacks: 1, packPriceMinor: 0 }],
                  [
                    { fromPacks: 1, packPriceMinor: 900 },
                    { fromPacks: 4, packPriceMinor: 700 },
                  ],
                ),
                nextOrderDay: fc.constantFrom(
                  orderDaysEvery(1),
                  orderDaysEvery(7, 3),
                  orderDaysEvery(400, 399),
                ),
              })
              .map((given) => offerOf(given)),
            { maxLength: 2 },
          ),
        }),
        (sample) => {
          const decision = decide({ ...sample, paths: 60, days: 80 });
          for (const value of numbersIn(decision)) expect(Number.isFinite(value)).toBe(true);
          expect(JSON.parse(JSON.stringify(decision))).toEqual(decision);
          expect(JSON.stringify(decision)).not.toContain('NaN');
        },
      ),
      { numRuns: 80 },
    );
  });
});

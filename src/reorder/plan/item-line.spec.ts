import { describe, expect, it } from 'vitest';
import type { DemandFacts } from '../demand/demand-facts.js';
import { studioDemand } from '../demand/demand-of-item.js';
import { NEVER } from '../projection/item-facts.js';
import { computeItem, followItem, type PlanItemFacts, type PlanSetting, prepareItem } from './item-line.js';

const demand: DemandFacts = {
  weekday: 1,
  days: 730,
  recordedFrom: -200,
  sessions: Array.from({ length: 40 }, (_, index) => ({
    id: `session ${index}`,
    procedureId: 'brows',
    visitKind: 'first session' as const,
    artistId: 'ana',
    day: -1 - 5 * index,
    bookedOn: -20 - 5 * index,
    followsSessionId: null,
    uses: [{ item: 'product needle', amount: 1 + (index % 2) }],
  })),
  unmetWants: [],
  bookings: [2, 9].map((day) => ({
    procedureId: 'brows',
    visitKind: 'first session' as const,
    artistId: 'ana',
    day,
    followsSessionId: null,
  })),
  lapsedBookings: [],
  courses: [],
  owedTouchUps: [],
  touchUpDays: new Map([['brows', { fromDays: 30, toDays: 40 }]]),
  kitLists: [],
  lastDays: new Map(),
  returnPerMille: null,
};
const setting: PlanSetting = { plannedOn: '2026-03-02', seed: 7, paths: 200, bookingsPerMille: 1_000 };
const item = (facts: Partial<PlanItemFacts> = {}): PlanItemFacts => ({
  kind: 'product',
  key: 'needle',
  unit: 'pieces',
  demand: {
    item: 'product needle',
    unitsOfKitQuantity: 1,
    availableFrom: null,
    replaces: null,
    otherUses: [],
  },
  stock: {
    batches: [{ containers: 5, unitsEach: 1, lastDay: 200, opened: false, costEachMinor: 90 }],
    onTheWay: [],
    openedLifeDays: NEVER,
  },
  onHoldUnits: 0,
  offers: [
    {
      ...{ offerId: 'offer', productId: 'needle', supplierId: 'quill', packContainers: 20, unitsEach: 1 },
      ...{
        minimumPacks: 1,
        prices: [{ fromPacks: 1, packPriceMinor: 1_800 }],
        orderWeekdays: [],
        lifeDays: 540,
      },
      leadTime: { days: [3, 6], weights: [0.5, 0.5] },
      ...{ deliveryCostMinor: 690, linesPerDelivery: 3 },
    },
  ],
  settings: {
    serviceTargetPerMille: 950,
    shortageCostMinor: null,
    orderCostMinor: 500,
    holdingPerYearPerMille: 100,
    rangeChoice: null,
  },
  ...facts,
});
const studio = studioDemand(demand);
const compute = (facts: PlanItemFacts, given: Partial<PlanSetting> = {}) =>
  computeItem(prepareItem(studio, facts, { ...setting, ...given }));

describe('an item of a plan', () => {
  it('that is used every week and nearly out is ordered, with what may happen day by day', () => {
    const { decision, demand: need, fanWithout, fanAfter } = compute(item());
    expect(decision.decision).toMatch(/^order/);
    expect(decision.order).toMatchObject({ offerId: 'offer', supplierId: 'quill' });
    expect(need.weeks.length).toBe(18);
    expect(fanWithout?.days.slice(0, 16)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 18]);
    expect(fanWithout?.p95.at(-1)).toBe(0);
    expect(fanAfter?.p50.at(-1)).toBeGreaterThan(0);
    for (const [index, middle] of (fanAfter?.p50 ?? []).entries()) {
      expect(fanAfter?.p5[index]).toBeLessThanOrEqual(middle);
      expect(fanAfter?.p95[index]).toBeGreaterThanOrEqual(middle);
    }
  });

  it('comes out the same of the same facts, whatever was computed before', () => {
    const first = compute(item());
    compute(item({ key: 'another' }));
    expect(compute(item())).toEqual(first);
  });

  it('has figures that are all numbers, with nothing here, nothing offered, or all at its ends', () => {
    const nothing = { batches: [], onTheWay: [], openedLifeDays: 0 };
    const ends = {
      ...item().settings,
      serviceTargetPerMille: 1_000,
      holdingPerYearPerMille: 0,
      orderCostMinor: 0,
    };
    const kinds = [
      item({ stock: nothing, offers: [] }),
      item({ stock: nothing, settings: ends }),
      item({ settings: { ...ends, serviceTargetPerMille: 0 } }),
      item({ demand: { ...item().demand, item: 'product that nobody used' } }),
    ];
    for (const facts of kinds) {
      // JSON writes what is no number as null.
      const text = JSON.stringify(compute(facts), (_, value) => {
        if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${value} in ${facts.key}`);
        return value;
      });
      expect(text.length).toBeGreaterThan(100);
    }
    expect(compute(item({ stock: nothing, offers: [] })).decision.decision).toBe('cannot be ordered');
  });

  it('is expected to go with an order that a basket made of it as that one goes', () => {
    const [offer] = item().offers;
    if (offer === undefined) throw new Error('The sample has no offer.');
    const prepared = prepareItem(studio, item({ offers: [{ ...offer, lifeDays: 60 }] }), setting);
    const { decision } = computeItem(prepared);
    const withOrder = (packs: number, day: number) =>
      followItem(prepared, decision, { offerId: 'offer', packs, day });
    const { after, fan, order } = withOrder(1, 0);
    const late = withOrder(1, 40);
    const many = withOrder(20, 0);
    expect(after.shortChance).toBeLessThan(late.after.shortChance);
    expect(after.expectedUnmetUnits).toBeLessThan(late.after.expectedUnmetUnits);
    expect(many.after.coverDays).toBeGreaterThan(after.coverDays);
    expect(many.after.expectedWasteUnits).toBeGreaterThan(after.expectedWasteUnits);
    expect(many.fan?.p50[7]).toBe((fan?.p50[7] ?? 0) + 19 * 20);
    // What would run out for good by itself is not ordered again by a point it does not have.
    const once = followItem(prepared, { ...decision, reorderPoint: null }, order);
    expect(once.after.expectedUnmetUnits).toBeGreaterThan(after.expectedUnmetUnits);
    expect(() => followItem(prepared, decision, { ...order, offerId: 'another' })).toThrow(RangeError);
  });

  it('shows the need by as many bookings as are supposed', () => {
    const known = (bookingsPerMille: number) =>
      compute(item(), { bookingsPerMille }).demand.weeks.reduce(
        (sums, week) => ({ known: sums.known + week.known, unforeseen: sums.unforeseen + week.unforeseen }),
        { known: 0, unforeseen: 0 },
      );
    const usual = known(1_000);
    expect(known(0)).toEqual({ known: 0, unforeseen: 0 });
    expect(known(500).known).toBeCloseTo(usual.known / 2, 9);
    expect(known(2_000).unforeseen).toBeCloseTo(2 * usual.unforeseen, 9);
  });

  it('needs more when more is booked', () => {
    const usual = compute(item());
    const busy = compute(item(), { bookingsPerMille: 3_000 });
    expect(busy.decision.without.expectedUnmetUnits).toBeGreaterThan(
      usual.decision.without.expectedUnmetUnits,
    );
  });
});

import { describe, expect, it } from 'vitest';
import type { DemandFacts, PastSession } from '../demand/demand-facts.js';
import { studioDemand } from '../demand/demand-of-item.js';
import type { PlanItemFacts, PlanOffer } from '../plan/item-line.js';
import { NEVER } from '../projection/item-facts.js';
import { factsAsOf } from './facts-as-of.js';
import { planThen } from './plan-then.js';
import type { ReplayMorning } from './replay-item.js';

const session = (day: number, amount: number): PastSession => ({
  visitKind: 'first session',
  ...{ id: `session ${day}`, procedureId: 'brows', artistId: 'ana', day },
  ...{ bookedOn: null, followsSessionId: null, uses: [{ item: 'product needle', amount }] },
});
const past = Array.from({ length: 60 }, (_, index) => session(-50 - 4 * index, 2));
const facts = (later: PastSession[] = []): DemandFacts => ({
  ...{ weekday: 1, days: 400, recordedFrom: -290, sessions: [...past, ...later], unmetWants: [] },
  ...{ bookings: [], lapsedBookings: [], courses: [], owedTouchUps: [], kitLists: [] },
  ...{ touchUpDays: new Map(), lastDays: new Map(), returnPerMille: null },
});
const offer: PlanOffer = {
  ...{ offerId: 'offer', productId: 'needle', supplierId: 'quill', packContainers: 20, unitsEach: 1 },
  ...{ minimumPacks: 1, prices: [{ fromPacks: 1, packPriceMinor: 1_800 }], orderWeekdays: [4] },
  leadTime: { days: [4], weights: [1] },
  ...{ lifeDays: 540, deliveryCostMinor: 690, linesPerDelivery: 3 },
};
const item: PlanItemFacts = {
  kind: 'product',
  unit: 'pieces',
  ...{ key: 'needle', onHoldUnits: 0, offers: [offer] },
  demand: {
    ...{ item: 'product needle', unitsOfKitQuantity: 1, availableFrom: null, replaces: null, otherUses: [] },
  },
  stock: { batches: [], onTheWay: [], openedLifeDays: NEVER },
  settings: {
    ...{ serviceTargetPerMille: 950, shortageCostMinor: null, orderCostMinor: 500 },
    ...{ holdingPerYearPerMille: 100, rangeChoice: null },
  },
};
const morning = (pieces: number): ReplayMorning => ({
  day: -49,
  batches: [{ containers: pieces, unitsEach: 1, lastDay: NEVER, opened: false, costEachMinor: 90.4 }],
  onTheWay: [],
  needs: [],
});
const decided = (given: DemandFacts, pieces: number) =>
  planThen(studioDemand(factsAsOf(given, -49)), item, offer, morning(pieces), {
    ...{ plannedOn: '2026-03-02', seed: 7, paths: 100 },
  });

describe('what the plan would have ordered then', () => {
  it('is something when little is left, on whatever weekday it is looked at, and nothing when there is plenty', () => {
    expect(decided(facts(), 1).packs).toBeGreaterThan(0);
    expect(decided(facts(), 1).shortageMinor).toBeGreaterThan(0);
    expect(decided(facts(), 400).packs).toBe(0);
  });

  it('is the same whatever came after', () => {
    const burst = Array.from({ length: 40 }, (_, index) => session(-1 - index, 30));
    expect(decided(facts(burst), 1)).toEqual(decided(facts(), 1));
  });
});

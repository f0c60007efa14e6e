import { describe, expect, it } from 'vitest';
import {
  demandOf,
  itemFacts,
  offerOf,
  replenishmentOf,
  type SampleItem,
  sealed,
} from '../../../tests/support/planning-samples.js';
import { decideItem } from './item-decision.js';
import { shareBookedInTime } from './range-decision.js';

/** Booked weeks ahead: nothing unknown within two weeks. */
const bookedEarly = [...Array.from({ length: 30 }, () => 0), 0.2, 0.4, 0.6, 0.8, 1];

function shade(sample: SampleItem): SampleItem {
  return {
    unit: 'microlitres',
    amounts: { amounts: [400, 600], weights: [0.5, 0.5] },
    days: 730,
    horizonDays: 120,
    openedLifeDays: 365,
    paths: 600,
    offers: [
      offerOf({
        packContainers: 1,
        unitsEach: 10_000,
        lifeDays: 600,
        prices: [{ fromPacks: 1, packPriceMinor: 4_000 }],
      }),
    ],
    ...sample,
  };
}

describe('the range decision', () => {
  it('lets a shade run out that nearly nobody wants', () => {
    const { decision, range, order } = decideItem(
      itemFacts(shade({ usesPerWeek: 0.02, settings: { shortageCostMinor: 1_000 } })),
    );
    expect(range?.advised).toBe('let run out');
    expect(decision).toBe('let run out');
    expect(order).toBeNull();
  });

  it('never costs less than nothing, however seldom it is used', () => {
    for (const usesPerWeek of [0.01, 0.03, 0.1, 0.3]) {
      for (const openedLifeDays of [60, 180, 900]) {
        const { range } = decideItem(itemFacts(shade({ usesPerWeek, openedLifeDays, paths: 1_000 })));
        const [keep, appointment] = range?.options ?? [];
        // The order and what is wasted of a bottle at least, for what is used.
        expect(keep?.costPerUsedUnitMinor).toBeGreaterThan(0.4);
        expect(appointment?.costPerYearMinor).toBeGreaterThan(0);
      }
    }
  });

  it('still orders for who is booked when that is worth it', () => {
    const { decision, range, order } = decideItem(
      itemFacts(
        shade({
          usesPerWeek: 0.005,
          settings: { shortageCostMinor: 1_800 },
          expected: [20, 23, 26].map((firstDay) => ({
            source: 'booking',
            chance: 0.95,
            firstDay,
            dayWeights: [1],
            amount: { amounts: [500], weights: [1] },
          })),
        }),
      ),
    );
    expect(range?.advised).toBe('let run out');
    expect(decision).toBe('order for the appointment');
    expect(order?.packs).toBe(1);
  });

  it('orders for the appointment what is wanted seldom, always booked early, and does not keep', () => {
    const sample = shade({
      usesPerWeek: 0.08,
      openedLifeDays: 2,
      unknownShares: bookedEarly,
      settings: { shortageCostMinor: 20_000 },
      offers: [
        offerOf({
          packContainers: 1,
          unitsEach: 10_000,
          lifeDays: 90,
          prices: [{ fromPacks: 1, packPriceMinor: 1_500 }],
        }),
      ],
    });
    const { decision, range } = decideItem(itemFacts(sample));
    expect(range).toMatchObject({ advised: 'order for the appointment', appointmentPossible: true });
    expect(decision).toBe('order for the appointment');
  });

  it('orders for the appointment what a few figures of the studio make look booked a little too late', () => {
    // 94 % are booked in time, 95 % should be met: who comes without costs what the target says, and no more.
    const sample = shade({
      usesPerWeek: 0.12,
      openedLifeDays: 30,
      unknownShares: [...Array.from({ length: 14 }, () => 0.06), 0.3, 0.7, 1],
      offers: [
        offerOf({
          packContainers: 1,
          unitsEach: 10_000,
          lifeDays: 120,
          prices: [{ fromPacks: 1, packPriceMinor: 4_000 }],
        }),
      ],
    });
    const { decision, range } = decideItem(itemFacts({ ...sample, paths: 1_000 }));
    expect(range).toMatchObject({ advised: 'order for the appointment', appointmentPossible: true });
    expect(range?.bookedInTime).toBeCloseTo(0.94, 6);
    expect(decision).toBe('order for the appointment');
    const cost = new Map(range?.options.map(({ choice, costPerYearMinor }) => [choice, costPerYearMinor]));
    expect(cost.get('order for the appointment')).toBeLessThan(cost.get('keep in stock') ?? 0);
  });

  it('keeps in stock what half come for unbooked, when going without is dear', () => {
    const sample = shade({ usesPerWeek: 0.3, unknownShares: [0.5], settings: { shortageCostMinor: 20_000 } });
    const { range } = decideItem(itemFacts(sample));
    expect(range).toMatchObject({ advised: 'keep in stock', appointmentPossible: true });
  });

  it('does not order for appointments what walk-ins want', () => {
    const { range } = decideItem(
      itemFacts(shade({ usesPerWeek: 0.3, settings: { shortageCostMinor: 20_000 } })),
    );
    expect(range).toMatchObject({ advised: 'keep in stock', appointmentPossible: false, bookedInTime: 0 });
  });

  it('does what the manager chose and shows what the others cost', () => {
    const { decision, range } = decideItem(
      itemFacts(
        shade({ usesPerWeek: 0.3, settings: { rangeChoice: 'let run out', shortageCostMinor: 20_000 } }),
      ),
    );
    expect(decision).toBe('let run out');
    expect(range).toMatchObject({ choice: 'let run out', advised: 'keep in stock', chosenBy: 'manager' });
    expect(range?.options.map(({ choice }) => choice)).toEqual([
      'keep in stock',
      'order for the appointment',
      'let run out',
    ]);
  });

  it('gives each way its cost a year, a used unit and a session', () => {
    const usesPerYear = (0.3 * 365) / 7;
    const { range } = decideItem(
      itemFacts(shade({ usesPerWeek: 0.3, paths: 2_000, settings: { shortageCostMinor: 20_000 } })),
    );
    const [keep, , runOut] = range?.options ?? [];
    expect(range?.sessionsPerYear).toBeCloseTo(usesPerYear, 3);
    // Every session of a year goes without: 20,000 each.
    expect(runOut?.costPerSessionMinor).toBeGreaterThan(19_000);
    expect(runOut?.costPerSessionMinor).toBeLessThan(21_000);
    expect(runOut?.costPerUsedUnitMinor).toBeNull();
    // What is used costs its price at least: 0.4 a microlitre.
    expect(keep?.costPerUsedUnitMinor).toBeGreaterThan(0.4);
    expect(keep?.costPerYearMinor).toBeGreaterThan(usesPerYear * 500 * 0.4 * 0.95);
    expect(keep?.unmetSessionsPerYear).toBeLessThan(1);
  });

  it('is not asked of what is used every day', () => {
    expect(decideItem(itemFacts({ usesPerWeek: 20, batches: [sealed(40, 1)] })).range).toBeNull();
  });
});

it('knows the share that is booked before a delivery would have to be ordered', () => {
  const model = demandOf({
    usesPerWeek: 1,
    days: 60,
    unknownShares: [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
  });
  const leadTime = { days: [3, 8], weights: [0.5, 0.5] };
  expect(shareBookedInTime(model, replenishmentOf({ leadTime }))).toBeCloseTo(0.5 * 0.7 + 0.5 * 0.2, 12);
  expect(shareBookedInTime(demandOf({ usesPerWeek: 0 }), replenishmentOf())).toBe(1);
});

/** One bottle of 24.00 that keeps 90 days, for two uses in two months. */
const dearBottle = {
  usesPerWeek: 2 / 8.5,
  openedLifeDays: 90,
  offers: [
    offerOf({
      packContainers: 1,
      unitsEach: 10_000,
      lifeDays: 90,
      prices: [{ fromPacks: 1, packPriceMinor: 2_400 }],
    }),
  ],
};

describe('where the service target says what a missing unit costs', () => {
  it('never lets run out what is needed because its pack is dear', () => {
    for (const serviceTargetPerMille of [500, 950]) {
      const { decision, range, order, reorderPoint, after } = decideItem(
        itemFacts(shade({ ...dearBottle, settings: { serviceTargetPerMille } })),
      );
      expect(range).toMatchObject({ choice: 'keep in stock', chosenBy: 'service target' });
      expect(range?.options).toHaveLength(3);
      expect(decision).toBe('order now');
      expect(order?.packs).toBe(1);
      expect(reorderPoint?.units).toBeGreaterThan(0);
      const [keep] = range?.options ?? [];
      const wanted = range?.sessionsPerYear ?? 0;
      expect(keep?.unmetSessionsPerYear).toBeLessThanOrEqual(wanted * (1 - serviceTargetPerMille / 1_000));
      expect(after.expectedUnmetUnits).toBeGreaterThan(0);
    }
  });

  it('does not put off an order that is due because waiting is cheap', () => {
    const { order, after } = decideItem(itemFacts(shade({ ...dearBottle, usesPerWeek: 0.1, paths: 400 })));
    expect(order?.on).toBe('2026-11-26');
    expect(after.shortChance).toBeLessThan(0.3);
  });

  it('lets it run out by cost where a session was given its worth by hand', () => {
    const { decision, range } = decideItem(
      itemFacts(shade({ ...dearBottle, settings: { shortageCostMinor: 50 } })),
    );
    expect(range).toMatchObject({ choice: 'let run out', chosenBy: 'cost' });
    expect(decision).toBe('let run out');
  });

  it('does not wait for appointments that leave more unmet than the target allows', () => {
    const sample = { ...dearBottle, unknownShares: [0.8], settings: { serviceTargetPerMille: 900 } };
    expect(decideItem(itemFacts(shade(sample))).range).toMatchObject({ advised: 'keep in stock' });
  });

  it('lets run out what nobody needs, what is not to be met, and what cannot be used in date', () => {
    const [offer] = dearBottle.offers;
    if (offer === undefined) throw new Error('no offer');
    const spoilt = { ...offer, replenishment: { ...offer.replenishment, lifeDays: -1 } };
    for (const sample of [
      { usesPerWeek: 0 },
      { settings: { serviceTargetPerMille: 0 } },
      { offers: [spoilt] },
    ]) {
      const { range, decision } = decideItem(itemFacts(shade({ ...dearBottle, ...sample })));
      expect(range).toMatchObject({ choice: 'let run out', chosenBy: 'cost' });
      expect(decision).toBe('let run out');
    }
  });
});

describe('what the manager keeps in stock', () => {
  it('is kept, and ordered at the reorder point, even with a target of 0 %', () => {
    const settings = { rangeChoice: 'keep in stock', serviceTargetPerMille: 0 } as const;
    const empty = decideItem(itemFacts(shade({ ...dearBottle, settings })));
    expect(empty).toMatchObject({ decision: 'order now', order: { packs: 1 } });
    expect(empty.reorderPoint?.units).toBeGreaterThan(0);
    const full = decideItem(itemFacts(shade({ ...dearBottle, settings, batches: [sealed(2, 10_000, 80)] })));
    expect(['order later', 'enough']).toContain(full.decision);
    expect(full.reorderPoint?.units).toBeGreaterThan(0);
  });

  it('keeps its reorder point while nobody needs it', () => {
    const settings = { rangeChoice: 'keep in stock' } as const;
    const { decision, reorderPoint } = decideItem(itemFacts(shade({ usesPerWeek: 0, settings })));
    expect(decision).toBe('enough');
    expect(reorderPoint).not.toBeNull();
  });
});

describe('what is ordered for appointments', () => {
  const bookings = (count: number, chance: number) =>
    Array.from({ length: count }, (_, index) => ({
      ...{ source: 'booking' as const, chance, firstDay: 10 + 2 * index, dayWeights: [1] },
      amount: { amounts: [500], weights: [1] },
    }));
  const decide = (expected: ReturnType<typeof bookings>) =>
    decideItem(
      itemFacts(
        shade({
          ...dearBottle,
          ...{ usesPerWeek: 0, expected, paths: 300 },
          settings: { rangeChoice: 'order for the appointment' },
        }),
      ),
    );

  it('is a shade that one in five of many bookings takes', () => {
    const { order, after, without, reasons } = decide(bookings(17, 0.2));
    expect(order).toMatchObject({ packs: 1, on: '2026-11-28' });
    expect(without.shortChance).toBeGreaterThan(0.9);
    expect(after.shortChance).toBeLessThan(0.1);
    expect(reasons.some(({ code }) => code === 'appointments to order for')).toBe(true);
  });

  it('is not a shade that a single session hardly ever takes, which is then not what waiting is good for', () => {
    const { order, range } = decide(bookings(1, 0.07));
    expect(order).toBeNull();
    const [, appointment] = range?.options ?? [];
    expect(appointment).toMatchObject({ deliveriesPerYear: 0 });
    expect(range?.advised).toBe('order for the appointment');
  });

  it('buys no bottle on suspicion of what has fewer than one use to expect in its life, but for who is known to take it', () => {
    const seldom = shade({ ...dearBottle, usesPerWeek: 0.05, unknownShares: bookedEarly, paths: 300 });
    const { decision, order, range } = decideItem(itemFacts(seldom));
    expect(range).toMatchObject({ choice: 'order for the appointment', chosenBy: 'too seldom' });
    expect(decision).toBe('order for the appointment');
    expect(order).toBeNull();
    const walkIns = { ...seldom, unknownShares: [1], expected: bookings(1, 0.95) };
    expect(decideItem(itemFacts({ ...walkIns, expected: [] })).decision).toBe('let run out');
    expect(decideItem(itemFacts(walkIns)).order?.packs).toBe(1);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NEVER } from '../projection/item-facts.js';
import { orderBetween } from './fixed-levels.js';
import { type ItemPast, replayItem, replayReal } from './replay-item.js';

const past = (more: Partial<ItemPast> = {}): ItemPast => ({
  firstDay: -60,
  stock: [{ containers: 4, unitsEach: 1, lastDay: NEVER, opened: false, costEachMinor: 100 }],
  needs: Array.from({ length: 60 }, (_, index) => ({ day: index - 60, units: 1 })),
  arrivals: [],
  openedLifeDays: NEVER,
  terms: {
    ...{ packContainers: 10, unitsEach: 1, packMinor: 1_000, leadTimeDays: 3, lifeDays: NEVER },
    ...{ orderMinor: 500, shortageMinor: 2_000, holdingMinorPerUnitDay: 0.5, reviewEveryDays: 1 },
  },
  ...more,
});

describe('had this been followed', () => {
  it('runs short of what nobody orders', () => {
    const result = replayItem(past(), () => 0);
    expect(result).toMatchObject({
      days: 60,
      neededUnits: 60,
      unmetUnits: 56,
      shortDays: 56,
      orders: [],
      endUnits: 0,
    });
    // 3, 2, 1 units lie overnight.
    expect(result.costMinor).toBe(56 * 2_000 + 6 * 0.5);
  });

  it('meets a steady need by ordering when a lead time is left', () => {
    const result = replayItem(past(), orderBetween({ minimumUnits: 4, maximumUnits: 10 }, past().terms));
    expect(result.unmetUnits).toBe(0);
    expect(result.orders[0]).toEqual({ day: -60, packs: 1 });
    expect(4 + result.orderedUnits - onTheWayAtEnd(result)).toBe(60 + result.endUnits);
    expect(result.wasteUnits).toBe(0);
  });

  it('comes to what really happened when it is told to do that', () => {
    const terms = { ...past().terms, leadTimeDays: 2 };
    const real = past({
      terms,
      arrivals: [-50, -30].map((day) => ({
        orderId: `order ${day}`,
        orderedOn: day - 2,
        day,
        batch: { containers: 10, unitsEach: 1, lastDay: NEVER, opened: false, costEachMinor: 100 },
      })),
    });
    const followed = replayItem(real, ({ day }) => (day === -52 || day === -32 ? 1 : 0));
    expect(followed).toEqual(replayReal(real));
  });

  it('wastes what expires, at what it cost', () => {
    const terms = { ...past().terms, lifeDays: 4 };
    const result = replayItem(past({ terms, needs: [] }), ({ day }) => (day === -60 ? 1 : 0));
    expect(result).toMatchObject({ wasteUnits: 10, wasteMinor: 1_000, endUnits: 4 });
  });

  it('has what was ordered before come as it came, and does not tell when', () => {
    const early = past({
      arrivals: [
        {
          orderId: 'early',
          orderedOn: -61,
          day: -20,
          batch: { containers: 10, unitsEach: 1, lastDay: NEVER, opened: false, costEachMinor: 100 },
        },
      ],
    });
    const told: number[] = [];
    const result = replayItem(early, ({ onTheWay }) => {
      told.push(...onTheWay.map(({ arrivesOn }) => arrivesOn));
      return 0;
    });
    expect(told.slice(0, 4)).toEqual([2, 1, 1, 1]);
    expect(told).toHaveLength(40);
    expect(result.unmetUnits).toBe(46);
  });

  it('decides the same on every morning whatever needs come after it', () => {
    const needs = fc.array(fc.record({ day: fc.integer({ min: -60, max: -1 }), units: fc.nat(9) }), {
      maxLength: 40,
    });
    fc.assert(
      fc.property(needs, needs, fc.integer({ min: -59, max: -1 }), (many, others, day) => {
        const decideBy =
          (record: unknown[]) => (morning: { needs: readonly { units: number }[]; day: number }) => {
            if (morning.day <= day) record.push(structuredClone(morning));
            return morning.needs.reduce((sum, { units }) => sum + units, 0) % 3;
          };
        const seen: unknown[] = [];
        const seenOtherwise: unknown[] = [];
        const before = many.filter((need) => need.day < day);
        const arrivals = [
          { orderId: 'a', orderedOn: -70, day: Math.max(day, -3), batch: past().stock[0] ?? never() },
        ];
        replayItem(past({ needs: [...before, ...many.filter((need) => need.day >= day)] }), decideBy(seen));
        replayItem(
          past({ needs: [...before, ...others.filter((need) => need.day >= day)] }),
          decideBy(seenOtherwise),
        );
        expect(seenOtherwise).toEqual(seen);
        // Nor does it know when an order of before will come, only when it should.
        const late: unknown[] = [];
        const later: unknown[] = [];
        replayItem(past({ needs: before, arrivals }), decideBy(late));
        replayItem(
          past({ needs: before, arrivals: arrivals.map((each) => ({ ...each, day: -1 })) }),
          decideBy(later),
        );
        const until = late.length - 1;
        expect(later.slice(0, until)).toEqual(late.slice(0, until));
      }),
    );
  });

  it('refuses a decision that is no number of packs', () => {
    expect(() => replayItem(past(), () => -1)).toThrow('-1 packs were ordered');
    expect(() => replayItem(past(), () => Number.NaN)).toThrow('NaN packs were ordered');
  });
});

function onTheWayAtEnd({ orders }: { orders: { day: number; packs: number }[] }): number {
  return orders.filter(({ day }) => day + 3 >= 0).reduce((sum, { packs }) => sum + 10 * packs, 0);
}

function never(): never {
  throw new Error('There is stock.');
}

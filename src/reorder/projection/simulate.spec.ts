import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DemandDraws } from './demand-draws.js';
import { type CostRates, type ItemStock, NEVER, type OrderPolicy, type Replenishment } from './item-facts.js';
import { orderDays } from './order-days.js';
import type { Outcome } from './outcome.js';
import { numberOf } from './random-numbers.js';
import { type Horizon, Simulation } from './simulate.js';

interface Case {
  stock: ItemStock;
  replenishment: Replenishment | null;
  draws: DemandDraws;
  policy: OrderPolicy;
  rates: CostRates;
  horizon: Horizon;
}

type Figures = Record<Exclude<keyof Outcome, 'paths' | 'firstShortCounts'>, number>;

/** One container at a time, one day after the other, one unit after the other: slow and plain. */
function walkPlainly({ stock, replenishment, draws, policy, rates, horizon }: Case, path: number) {
  interface Container {
    units: number;
    lastDay: number;
    opened: boolean;
    unitMinor: number;
  }
  const luckyDays = (
    { days, weights }: { days: readonly number[]; weights: readonly number[] },
    luck: number,
  ) => {
    const whole = weights.reduce((sum, weight) => sum + weight, 0);
    const order = days.map((each, index) => ({ each, weight: (weights[index] ?? 0) / whole }));
    order.sort((one, other) => one.each - other.each);
    let sum = 0;
    for (const { each, weight } of order) {
      sum += weight;
      if (weight > 0 && luck < sum) return each;
    }
    return order.findLast(({ weight }) => weight > 0)?.each ?? 0;
  };
  const needs = new Map<number, number>();
  for (let event = draws.offsets[path] ?? 0; event < (draws.offsets[path + 1] ?? 0); event++) {
    needs.set(draws.eventDays[event] ?? 0, draws.eventUnits[event] ?? 0);
  }
  let shelf: Container[] = stock.batches.flatMap((batch) =>
    Array.from({ length: batch.containers }, () => ({
      units: batch.unitsEach,
      lastDay: batch.lastDay,
      opened: batch.opened,
      unitMinor: batch.costEachMinor === null ? rates.unitMinor : batch.costEachMinor / batch.unitsEach,
    })),
  );
  let coming = stock.onTheWay.map((sent, index) => ({
    ...sent,
    day: Math.max(0, luckyDays(sent.arrival, numberOf(draws.seed, path, -1 - index))),
    unitMinor: rates.unitMinor,
  }));
  const figures: Figures = {
    usedUnits: 0,
    unmetUnits: 0,
    shortDays: 0,
    short: 0,
    daysOfCover: horizon.days,
    wastedUnits: 0,
    wastedMinor: 0,
    wastedInTailUnits: 0,
    orders: 0,
    packs: 0,
    priceDifferenceMinor: 0,
    heldUnitDays: 0,
    heldInTailUnitDays: 0,
    unitsAtHorizon: 0,
    onTheWayAtHorizon: 0,
    usedInTailUnits: 0,
    unmetInTailUnits: 0,
    unitsAtEnd: 0,
    onTheWayAtEnd: 0,
    costMinor: 0,
  };
  const waste = (container: Container, day: number): void => {
    figures.wastedUnits += container.units;
    figures.wastedMinor += container.units * container.unitMinor;
    if (day >= horizon.days) figures.wastedInTailUnits += container.units;
  };
  const usable = () => shelf.reduce((sum, { units }) => sum + units, 0);
  const onTheWay = () => coming.reduce((sum, { containers, unitsEach }) => sum + containers * unitsEach, 0);
  const place = (day: number, wanted: number): void => {
    if (!replenishment) return;
    const { minimumPacks, packContainers, unitsEach, lifeDays, prices, leadTime } = replenishment;
    const packs = Math.max(wanted, minimumPacks);
    const reference = rates.unitMinor * packContainers * unitsEach;
    const rising = [...prices].sort((one, other) => one.fromPacks - other.fromPacks);
    const reached = rising.findLast(({ fromPacks }) => fromPacks <= packs) ?? rising[0];
    const price = reached?.packPriceMinor ?? reference;
    const lead = luckyDays(leadTime, numberOf(draws.seed, path, figures.orders));
    figures.orders++;
    figures.packs += packs;
    figures.priceDifferenceMinor += packs * (price - reference);
    coming.push({
      containers: packs * packContainers,
      unitsEach,
      arrival: { days: [lead], weights: [1] },
      lifeDays,
      day: day + lead,
      unitMinor: price / (packContainers * unitsEach),
    });
  };
  const arrive = (day: number): void => {
    for (const { containers, unitsEach, lifeDays, unitMinor } of coming.filter((sent) => sent.day === day)) {
      const lastDay = Math.min(NEVER, day + lifeDays);
      for (let each = 0; each < containers; each++) {
        const container = { units: unitsEach, lastDay, opened: false, unitMinor };
        if (lastDay < day) waste(container, day);
        else shelf.push(container);
      }
    }
    coming = coming.filter((sent) => sent.day !== day);
  };
  const firstDay = policy.first ? (replenishment?.nextOrderDay[policy.first.day] ?? NEVER) : -1;
  const evenings: number[] = [];

  for (const container of shelf.filter(({ lastDay }) => lastDay < 0)) waste(container, -1);
  shelf = shelf.filter(({ lastDay }) => lastDay >= 0);
  for (let day = 0; day < horizon.days + horizon.tailDays; day++) {
    arrive(day);
    if (replenishment && day < horizon.days && replenishment.nextOrderDay[day] === day) {
      const position = usable() + onTheWay();
      const point = policy.reorderPointUnits;
      const packUnits = replenishment.packContainers * replenishment.unitsEach;
      if (day === firstDay && policy.first && policy.first.packs > 0) place(day, policy.first.packs);
      if (day > firstDay && point !== null && position <= point) {
        place(day, Math.max(policy.packs, Math.floor((point - position) / packUnits) + 1));
      }
      arrive(day);
    }
    let left = needs.get(day) ?? 0;
    while (left > 0) {
      // A stable sort: of equal last days that which came first.
      shelf.sort((one, other) => Number(other.opened) - Number(one.opened) || one.lastDay - other.lastDay);
      const container = shelf[0];
      if (!container) break;
      if (!container.opened) {
        container.opened = true;
        container.lastDay = Math.min(container.lastDay, day + stock.openedLifeDays);
      }
      container.units--;
      if (container.units === 0) shelf.shift();
      left--;
      if (day < horizon.days) figures.usedUnits++;
      else figures.usedInTailUnits++;
    }
    if (left > 0 && day < horizon.days) {
      if (figures.short === 0) figures.daysOfCover = day;
      figures.short = 1;
      figures.shortDays++;
      figures.unmetUnits += left;
    }
    if (day >= horizon.days) figures.unmetInTailUnits += left;
    for (const container of shelf.filter(({ lastDay }) => lastDay <= day)) waste(container, day);
    shelf = shelf.filter(({ lastDay }) => lastDay > day);
    evenings.push(usable());
    if (day < horizon.days) figures.heldUnitDays += usable();
    else figures.heldInTailUnitDays += usable();
    if (day === horizon.days - 1) {
      figures.unitsAtHorizon = usable();
      figures.onTheWayAtHorizon = onTheWay();
    }
  }
  figures.unitsAtEnd = usable();
  figures.onTheWayAtEnd = onTheWay();
  figures.costMinor =
    figures.wastedMinor +
    rates.shortageMinor * figures.unmetUnits +
    rates.orderMinor * figures.orders +
    rates.holdingMinorPerDay * figures.heldUnitDays +
    figures.priceDifferenceMinor;
  return { figures, evenings };
}

function figuresOf({ paths: _paths, firstShortCounts: _counts, ...estimates }: Outcome): Figures {
  return Object.fromEntries(Object.entries(estimates).map(([name, { mean }]) => [name, mean])) as Figures;
}

function drawsOf(
  paths: readonly (readonly [day: number, units: number][])[],
  days: number,
  seed = 1,
): DemandDraws {
  return {
    paths: paths.length,
    days,
    offsets: Int32Array.of(0, ...paths.map((_, index) => paths.slice(0, index + 1).flat().length)),
    eventDays: Uint16Array.from(paths.flat(), ([day]) => day),
    eventUnits: Int32Array.from(paths.flat(), ([, units]) => units),
    seed,
  };
}

function everyTime(days: number): [number, number][] {
  return Array.from({ length: days }, (_, day) => [day, 1]);
}

function everyDay(days: number): Int32Array {
  return Int32Array.from({ length: days }, (_, day) => day);
}

const noRates: CostRates = { unitMinor: 0, orderMinor: 0, shortageMinor: 0, holdingMinorPerDay: 0 };
const nothing: ItemStock = { batches: [], onTheWay: [], openedLifeDays: NEVER };
const noOrders: OrderPolicy = { first: null, reorderPointUnits: null, packs: 0 };

const days = fc.integer({ min: 1, max: 25 });
const life = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: -2, max: 30 }) },
  { weight: 1, arbitrary: fc.constant(NEVER) },
);
const takes = (from: number) =>
  fc.uniqueArray(fc.integer({ min: from, max: 12 }), { minLength: 1, maxLength: 3 }).chain((some) =>
    fc.record({
      days: fc.constant(some),
      weights: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: some.length, maxLength: some.length }),
    }),
  );
const money = fc.integer({ min: 0, max: 40 });

const anyCase: fc.Arbitrary<Case> = fc
  .record({
    horizonDays: days,
    tailDays: fc.integer({ min: 0, max: 12 }),
    unitsEach: fc.constantFrom(1, 1, 3, 8),
  })
  .chain(({ horizonDays, tailDays, unitsEach }) => {
    const end = horizonDays + tailDays;
    const path = fc
      .uniqueArray(fc.tuple(fc.nat({ max: end - 1 }), fc.integer({ min: 1, max: 9 })), {
        maxLength: end,
        selector: ([day]) => day,
      })
      .map((events) => events.sort(([one], [other]) => one - other));
    return fc.record({
      horizon: fc.constant({ days: horizonDays, tailDays }),
      rates: fc.record({
        unitMinor: money,
        orderMinor: money,
        shortageMinor: money,
        holdingMinorPerDay: money,
      }),
      draws: fc
        .tuple(fc.array(path, { minLength: 1, maxLength: 4 }), fc.integer())
        .map(([paths, seed]) => drawsOf(paths, end, seed)),
      stock: fc.record({
        openedLifeDays: fc.oneof(fc.constant(NEVER), fc.integer({ min: 0, max: 8 })),
        batches: fc.array(
          fc.record({
            containers: fc.integer({ min: 0, max: 4 }),
            unitsEach: fc.integer({ min: 1, max: 6 }),
            lastDay: life,
            opened: unitsEach === 1 ? fc.constant(false) : fc.boolean(),
            // Whole by unit, so that sums are exact.
            costEachMinor: fc.option(fc.integer({ min: 0, max: 5 }).map((each) => each * 60)),
          }),
          { maxLength: 5 },
        ),
        onTheWay: fc.array(
          fc.record({
            containers: fc.integer({ min: 0, max: 4 }),
            unitsEach: fc.constant(unitsEach),
            arrival: takes(-2),
            lifeDays: life,
          }),
          { maxLength: 3 },
        ),
      }),
      replenishment: fc.option(
        fc.record({
          packContainers: fc.constantFrom(1, 2, 5),
          unitsEach: fc.constant(unitsEach),
          minimumPacks: fc.integer({ min: 0, max: 3 }),
          prices: fc
            .array(
              fc.record({
                fromPacks: fc.integer({ min: 1, max: 4 }),
                packPriceMinor: money.map((each) => each * 120),
              }),
              { maxLength: 3 },
            )
            .map((some) =>
              some.filter(
                ({ fromPacks }, index) => some.findIndex((each) => each.fromPacks === fromPacks) === index,
              ),
            ),
          leadTime: takes(0),
          nextOrderDay: fc
            .array(fc.boolean(), { minLength: horizonDays, maxLength: horizonDays })
            .map((open) =>
              Int32Array.from(open, (_, day) => {
                const next = open.indexOf(true, day);
                return next === -1 ? NEVER : next;
              }),
            ),
          lifeDays: life,
        }),
        { freq: 6 },
      ),
      policy: fc.record({
        first: fc.option(
          fc.record({ day: fc.nat({ max: horizonDays - 1 }), packs: fc.integer({ min: 0, max: 4 }) }),
        ),
        reorderPointUnits: fc.option(fc.integer({ min: -1, max: 25 }), { freq: 5 }),
        packs: fc.integer({ min: 0, max: 3 }),
      }),
    });
  });

describe('a simulation', () => {
  it('comes path by path to what one container and one day at a time come to', () => {
    fc.assert(
      fc.property(anyCase, (made) => {
        const { stock, replenishment, draws, policy, rates, horizon } = made;
        const simulation = new Simulation(stock, replenishment, draws, rates, horizon);
        const evenings = new Int32Array(horizon.days + horizon.tailDays);
        for (let path = 0; path < draws.paths; path++) {
          const plain = walkPlainly(made, path);
          const walked = figuresOf(simulation.evaluate(policy, { from: path, to: path + 1 }));
          // Money and prices of the cases are whole by unit, so that even sums of many are exact.
          expect(walked).toEqual(plain.figures);
          simulation.eveningStock(policy, path, evenings);
          expect([...evenings]).toEqual(plain.evenings);
        }
      }),
      { numRuns: 1_500 },
    );
  });

  it('loses and makes no unit: what was there and came was used, wasted or is left', () => {
    fc.assert(
      fc.property(anyCase, ({ stock, replenishment, draws, policy, rates, horizon }) => {
        const simulation = new Simulation(stock, replenishment, draws, rates, horizon);
        const sum = (some: readonly { containers: number; unitsEach: number }[]): number =>
          some.reduce((units, { containers, unitsEach }) => units + containers * unitsEach, 0);
        for (let path = 0; path < draws.paths; path++) {
          const walked = figuresOf(simulation.evaluate(policy, { from: path, to: path + 1 }));
          const packUnits = replenishment ? replenishment.packContainers * replenishment.unitsEach : 0;
          const came = sum(stock.batches) + sum(stock.onTheWay) + walked.packs * packUnits;
          const { usedUnits, usedInTailUnits, wastedUnits, unitsAtEnd, onTheWayAtEnd } = walked;
          expect(usedUnits + usedInTailUnits + wastedUnits + unitsAtEnd + onTheWayAtEnd).toBe(came);
        }
      }),
    );
  });

  it('never has more unmet of more stock that does not expire', () => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 1, max: 20 }), ({ stock, draws, rates, horizon }, more) => {
        const kept = stock.batches.map((batch) => ({ ...batch, lastDay: NEVER }));
        const arriving = stock.onTheWay.map((sent) => ({ ...sent, lifeDays: NEVER }));
        const less = { batches: kept, onTheWay: arriving, openedLifeDays: NEVER };
        const added = { containers: more, unitsEach: 1, lastDay: NEVER, opened: false, costEachMinor: null };
        const greater = { ...less, batches: [...kept, added] };
        const unmet = ([less, greater] as const).map((each) => {
          const simulation = new Simulation(each, null, draws, rates, horizon);
          return Array.from({ length: draws.paths }, (_, path) => {
            const walked = simulation.evaluate(noOrders, { from: path, to: path + 1 });
            return walked.unmetUnits.mean + walked.unmetInTailUnits.mean;
          });
        });
        unmet[0]?.forEach((units, path) => {
          expect(unmet[1]?.[path]).toBeLessThanOrEqual(units);
        });
      }),
    );
  });

  it('gives the same again after other policies were tried', () => {
    fc.assert(
      fc.property(anyCase, ({ stock, replenishment, draws, policy, rates, horizon }) => {
        const simulation = new Simulation(stock, replenishment, draws, rates, horizon);
        const once = simulation.evaluate(policy);
        simulation.evaluate({ first: { day: 0, packs: 3 }, reorderPointUnits: 5, packs: 1 });
        simulation.eveningStock(policy, 0, new Int32Array(horizon.days + horizon.tailDays));
        expect(simulation.evaluate(policy)).toEqual(once);
        expect(evaluatePolicy(stock, replenishment, draws, policy, rates, horizon)).toEqual(once);
      }),
    );
  });

  it('gives numbers only, never less than nothing', () => {
    fc.assert(
      fc.property(anyCase, ({ stock, replenishment, draws, policy, rates, horizon }) => {
        const {
          paths: _paths,
          firstShortCounts,
          ...estimates
        } = evaluatePolicy(stock, replenishment, draws, policy, rates, horizon);
        expect([...firstShortCounts].reduce((sum, count) => sum + count, 0)).toBe(
          Math.round(estimates.short.mean * draws.paths),
        );
        for (const [name, { mean, standardError }] of Object.entries(estimates)) {
          expect(Number.isFinite(mean), name).toBe(true);
          expect(standardError, name).toBeGreaterThanOrEqual(0);
          if (name !== 'priceDifferenceMinor' && name !== 'costMinor')
            expect(mean, name).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });
});

describe('one path', () => {
  const horizon = { days: 10, tailDays: 0 };
  const oneADay = drawsOf([everyTime(10)], 10);
  const supply: Replenishment = {
    packContainers: 4,
    unitsEach: 1,
    minimumPacks: 1,
    prices: [],
    leadTime: { days: [2], weights: [1] },
    nextOrderDay: everyDay(10),
    lifeDays: NEVER,
  };
  const pieces = (containers: number, lastDay = NEVER) => ({
    containers,
    unitsEach: 1,
    lastDay,
    opened: false,
    costEachMinor: null,
  });
  const walked = (stock: Partial<ItemStock>, replenishment: Replenishment | null, policy: OrderPolicy) =>
    evaluatePolicy({ ...nothing, ...stock }, replenishment, oneADay, policy, noRates, horizon);

  it('wastes at the end of its last day whatever nobody needs', () => {
    const outcome = evaluatePolicy(
      { ...nothing, batches: [pieces(3, 4), pieces(2)] },
      null,
      drawsOf([[]], 10),
      noOrders,
      noRates,
      horizon,
    );
    expect(figuresOf(outcome)).toMatchObject({
      wastedUnits: 3,
      unmetUnits: 0,
      unitsAtHorizon: 2,
      heldUnitDays: 4 * 5 + 6 * 2,
    });
  });

  it('meets no need when everything is on hold and nothing can be ordered', () => {
    const outcome = walked({}, null, { first: { day: 0, packs: 5 }, reorderPointUnits: 3, packs: 1 });
    expect(figuresOf(outcome)).toMatchObject({
      unmetUnits: 10,
      short: 1,
      daysOfCover: 0,
      orders: 0,
      shortDays: 10,
    });
  });

  it('uses what arrives in the morning on the same day, and what is ordered without lead time at once', () => {
    const atOnce = { ...supply, leadTime: { days: [0], weights: [1] } };
    const outcome = walked({}, atOnce, { first: null, reorderPointUnits: 0, packs: 1 });
    expect(figuresOf(outcome)).toMatchObject({ unmetUnits: 0, orders: 3, unitsAtHorizon: 2 });
  });

  it('orders once for the lead time, counting what is on the way', () => {
    const outcome = walked({ batches: [pieces(3)] }, supply, { first: null, reorderPointUnits: 2, packs: 1 });
    // Ordered on days 1, 5 and 9, which is when 2 are left or on the way.
    expect(figuresOf(outcome)).toMatchObject({ orders: 3, unmetUnits: 0, onTheWayAtHorizon: 4 });
  });

  it('orders nothing before the day of the first order, and nothing then when that is the policy', () => {
    const outcome = walked({}, supply, { first: { day: 3, packs: 0 }, reorderPointUnits: 0, packs: 1 });
    // Reviewed from day 4 on; arrives on day 6.
    expect(figuresOf(outcome)).toMatchObject({ unmetUnits: 6, usedUnits: 4, orders: 1, daysOfCover: 0 });
  });

  it('wastes every pack when its life ends before it arrives, and goes on ordering', () => {
    const outcome = walked({}, { ...supply, lifeDays: -1 }, { first: null, reorderPointUnits: 0, packs: 1 });
    expect(figuresOf(outcome)).toMatchObject({
      unmetUnits: 10,
      wastedUnits: 16,
      orders: 5,
      onTheWayAtHorizon: 4,
    });
  });

  it('uses what is fresh for one day only on that day', () => {
    const outcome = walked(
      {},
      { ...supply, lifeDays: 0 },
      { first: { day: 0, packs: 1 }, reorderPointUnits: null, packs: 0 },
    );
    expect(figuresOf(outcome)).toMatchObject({ usedUnits: 1, wastedUnits: 3, unmetUnits: 9 });
  });

  it('wastes most of a pack that is larger than a lifetime of needs', () => {
    const large = { ...supply, packContainers: 500, lifeDays: 5 };
    const outcome = walked({}, large, { first: { day: 0, packs: 1 }, reorderPointUnits: null, packs: 0 });
    expect(figuresOf(outcome)).toMatchObject({ usedUnits: 6, wastedUnits: 494, unmetUnits: 4 });
  });

  it('discards what is left of an opened container when its opened life ends, and opens the next', () => {
    const bottles = { containers: 2, unitsEach: 30, lastDay: 8, opened: false, costEachMinor: 600 };
    const outcome = walked({ batches: [bottles], openedLifeDays: 2 }, null, noOrders);
    // Days 0 to 2 and 3 to 5: three used of each.
    expect(figuresOf(outcome)).toMatchObject({
      usedUnits: 6,
      wastedUnits: 54,
      wastedMinor: 54 * 20,
      unmetUnits: 4,
    });
  });

  it('uses opened containers first, each by its own last day', () => {
    const opened = (unitsEach: number, lastDay: number) => ({
      containers: 1,
      unitsEach,
      lastDay,
      opened: true,
      costEachMinor: null,
    });
    const outcome = walked({ batches: [pieces(1, 0), opened(4, 9), opened(3, 1)] }, null, noOrders);
    expect(figuresOf(outcome)).toMatchObject({ usedUnits: 6, wastedUnits: 2, unmetUnits: 4, daysOfCover: 6 });
  });

  it('orders only on order days, and takes the price of the packs it orders', () => {
    const nextOrderDay = orderDays({ firstDay: '2026-03-24', days: 10, weekdays: [1], closedDates: [] });
    const prices = [
      { fromPacks: 1, packPriceMinor: 50 },
      { fromPacks: 2, packPriceMinor: 30 },
    ];
    const rates = { ...noRates, unitMinor: 10 };
    const policy = { first: null, reorderPointUnits: 5, packs: 1 };
    const outcome = evaluatePolicy(
      nothing,
      { ...supply, nextOrderDay, prices },
      oneADay,
      policy,
      rates,
      horizon,
    );
    // Tuesday is day 0, so Monday day 6; two packs of four lift it above 5, each 10 below the rate of its units.
    expect(figuresOf(outcome)).toMatchObject({
      orders: 1,
      packs: 2,
      priceDifferenceMinor: -20,
      usedUnits: 2,
    });
  });

  it('places no order in the tail, but lets what is there be used or spoil', () => {
    const outcome = evaluatePolicy(
      { ...nothing, batches: [pieces(5, 6)] },
      supply,
      oneADay,
      { first: null, reorderPointUnits: 0, packs: 1 },
      noRates,
      { days: 3, tailDays: 7 },
    );
    expect(figuresOf(outcome)).toMatchObject({
      usedUnits: 3,
      usedInTailUnits: 2,
      orders: 0,
      unmetInTailUnits: 5,
      unmetUnits: 0,
    });
  });

  it('says what is wrong with absurd facts instead of counting with them', () => {
    expect(() => walked({ batches: [pieces(-1)] }, null, noOrders)).toThrow(
      'The containers of a batch: -1 was given',
    );
    expect(() => walked({}, { ...supply, packContainers: 0 }, noOrders)).toThrow(
      'The containers of a pack: 0 was given',
    );
    expect(() => walked({}, supply, { ...noOrders, packs: Number.NaN })).toThrow(
      'The packs of a later order: NaN was given',
    );
    expect(() =>
      evaluatePolicy(nothing, null, oneADay, noOrders, noRates, { days: 11, tailDays: 0 }),
    ).toThrow('The days looked ahead: 11 was given; a whole number of 1 to 10 is allowed.');
  });
});

/** One policy tried once. */
function evaluatePolicy(
  stock: ItemStock,
  replenishment: Replenishment | null,
  draws: DemandDraws,
  policy: OrderPolicy,
  rates: CostRates,
  horizon: Horizon,
): Outcome {
  return new Simulation(stock, replenishment, draws, rates, horizon).evaluate(policy);
}

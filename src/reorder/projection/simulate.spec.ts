import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DemandDraws } from './demand-draws.js';
import { type CostRates, type ItemStock, NEVER, type OrderPolicy, type Replenishment } from './item-facts.js';
import type { Outcome } from './outcome.js';
import { numberOf } from './random-numbers.js';
import { evaluatePolicy, type Horizon, Simulation } from './simulate.js';

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
    const reached = prices.filter(({ fromPacks }) => fromPacks <= packs);
    reached.sort((one, other) => other.fromPacks - one.fromPacks);
    const price = reached[0]?.packPriceMinor ?? reference;
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
                packPriceMinor: money.map((each) => each * 40),
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
          for (const [name, figure] of Object.entries(plain.figures)) {
            expect(walked[name as keyof Figures], name).toBeCloseTo(figure, 6);
          }
          simulation.eveningStock(policy, path, evenings);
          expect([...evenings]).toEqual(plain.evenings);
        }
      }),
      { numRuns: 2_000 },
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
});

import { type Batch, NEVER } from '../projection/item-facts.js';
import { StockWalk } from './stock-walk.js';

/** What an item's past was, in days counted from the day of the plan: all are negative. */
export interface ItemPast {
  /** The first morning that is replayed; it goes on to the evening before the plan. */
  firstDay: number;
  /** What was on the shelf that morning; last days count like all days here. */
  stock: readonly Batch[];
  /** What was needed, whether or not it was there, by rising day. */
  needs: readonly Need[];
  /** What really came, ordered before or after the first day. */
  arrivals: readonly RealArrival[];
  /** Days a container may be used after the day it was opened; NEVER when nothing limits it. */
  openedLifeDays: number;
  /** How the item can be had, and what things cost; the same for all that is compared. */
  terms: ReplayTerms;
}

export interface Need {
  day: number;
  units: number;
}

export interface RealArrival {
  orderId: string;
  orderedOn: number;
  day: number;
  batch: Batch;
}

export interface ReplayTerms {
  /** Containers and units of one pack. */
  packContainers: number;
  unitsEach: number;
  packMinor: number;
  /** From ordering to arrival, at least 0: a typical one, since what did not happen had no own. */
  leadTimeDays: number;
  /** Days it may be used from its arrival; NEVER when no date limits it. */
  lifeDays: number;
  orderMinor: number;
  shortageMinor: number;
  holdingMinorPerUnitDay: number;
  /** ISO weekday numbers do not matter here: every so many days it is asked what to order. */
  reviewEveryDays: number;
}

/** What is known on the morning on which it is asked what to order; days count from that morning. */
export interface ReplayMorning {
  /** Which morning it is, counted from the day of the plan: the day to look up other facts as of. */
  day: number;
  /** What is here. */
  batches: readonly Batch[];
  /** What was ordered and did not come yet; `arrivesOn` as it is to be expected. */
  onTheWay: readonly { units: number; containers: number; arrivesOn: number }[];
  /** What was needed before that morning, and no later. */
  needs: readonly Need[];
}

/** How many packs are ordered that morning. */
export type Decide = (morning: ReplayMorning) => number;

export interface ReplayResult {
  days: number;
  neededUnits: number;
  unmetUnits: number;
  /** Days on which something needed was missing. */
  shortDays: number;
  wasteUnits: number;
  wasteMinor: number;
  orders: { day: number; packs: number }[];
  orderedUnits: number;
  meanUnits: number;
  endUnits: number;
  /** Waste, shortages, orders and holding; the goods themselves are the same need for all. */
  costMinor: number;
}

/** Walks through the past as if it had been ordered by a decision, which sees nothing of the days to come. */
export function replayItem(past: ItemPast, decide: Decide): ReplayResult {
  const steps = replaySteps(past);
  let step = steps.next();
  while (!step.done) step = steps.next(decide(step.value));
  return step.value;
}

/**
 * The same step by step, so that many items are walked through day by day together: gives each morning on which it is asked
 * what to order, and is told the packs.
 */
export function* replaySteps(past: ItemPast): Generator<ReplayMorning, ReplayResult, number> {
  const { terms, firstDay } = past;
  const coming: { day: number; containers: number }[] = [];
  const orders: ReplayResult['orders'] = [];
  // What had been ordered before the first morning comes as it came.
  const before = past.arrivals.filter(({ orderedOn, day }) => orderedOn < firstDay && day >= firstDay);
  return yield* walk(past, orders, function* (day, shelf) {
    shelf.add(before.filter((arrival) => arrival.day === day).map(({ batch }) => batch));
    if ((day - firstDay) % Math.max(1, terms.reviewEveryDays) === 0) {
      const packs = yield morningOf(past, day, shelf, coming, before);
      if (!(Number.isSafeInteger(packs) && packs >= 0)) {
        throw new RangeError(`${packs} packs were ordered. Allowed are whole numbers from 0.`);
      }
      if (packs > 0) {
        orders.push({ day, packs });
        coming.push({ day: day + terms.leadTimeDays, containers: packs * terms.packContainers });
      }
    }
    for (const order of coming)
      if (order.day === day) shelf.add([packsArrived(terms, day, order.containers)]);
  });
}

/** Walks through the past with what really came, by the same measures. */
export function replayReal(past: ItemPast): ReplayResult {
  const { firstDay, terms } = past;
  const orders = new Map<string, { day: number; packs: number }>();
  for (const { orderId, orderedOn, batch } of past.arrivals) {
    if (orderedOn < firstDay || orderedOn >= 0) continue;
    const known = orders.get(orderId) ?? { day: orderedOn, packs: 0 };
    known.packs += batch.containers / Math.max(1, terms.packContainers);
    orders.set(orderId, known);
  }
  const steps = walk(past, [...orders.values()], function* (day, shelf) {
    shelf.add(past.arrivals.filter((arrival) => arrival.day === day).map(({ batch }) => batch));
  });
  // Nobody is asked anything: the first step is the end.
  const { done, value } = steps.next();
  if (!done) throw new Error('What really came was asked about.');
  return value;
}

function* walk(
  past: ItemPast,
  orders: ReplayResult['orders'],
  morning: (day: number, shelf: StockWalk) => Generator<ReplayMorning, void, number>,
): Generator<ReplayMorning, ReplayResult, number> {
  const { terms, firstDay } = past;
  const packUnits = terms.packContainers * terms.unitsEach;
  const shelf = new StockWalk(past.openedLifeDays, packUnits > 0 ? terms.packMinor / packUnits : 0);
  shelf.add(past.stock);
  const needs = new Map<number, number>();
  for (const { day, units } of past.needs) needs.set(day, (needs.get(day) ?? 0) + Math.max(0, units));
  const sums = { needed: 0, unmet: 0, short: 0, waste: 0, wasteMinor: 0, unitDays: 0 };
  for (let day = firstDay; day < 0; day++) {
    yield* morning(day, shelf);
    const needed = needs.get(day) ?? 0;
    const missing = shelf.take(day, needed);
    const waste = shelf.discard(day);
    sums.needed += needed;
    sums.unmet += missing;
    if (missing > 0) sums.short++;
    sums.waste += waste.units;
    sums.wasteMinor += waste.minor;
    sums.unitDays += shelf.units;
  }
  const days = Math.max(0, -firstDay);
  return {
    days,
    neededUnits: sums.needed,
    unmetUnits: sums.unmet,
    shortDays: sums.short,
    wasteUnits: sums.waste,
    wasteMinor: sums.wasteMinor,
    orders,
    orderedUnits: orders.reduce((sum, { packs }) => sum + packs * packUnits, 0),
    meanUnits: days === 0 ? 0 : sums.unitDays / days,
    endUnits: shelf.units,
    costMinor:
      sums.wasteMinor +
      sums.unmet * terms.shortageMinor +
      orders.length * terms.orderMinor +
      sums.unitDays * terms.holdingMinorPerUnitDay,
  };
}

function morningOf(
  past: ItemPast,
  day: number,
  shelf: StockWalk,
  coming: readonly { day: number; containers: number }[],
  before: readonly RealArrival[],
): ReplayMorning {
  const { unitsEach, leadTimeDays } = past.terms;
  return {
    day,
    batches: shelf.batches(day),
    onTheWay: [
      ...coming
        .filter((order) => order.day > day)
        .map(({ day: arrives, containers }) => ({
          containers,
          units: containers * unitsEach,
          arrivesOn: arrives - day,
        })),
      // When it really came is not known that morning.
      ...before
        .filter((arrival) => arrival.day > day)
        .map(({ orderedOn, batch }) => ({
          containers: batch.containers,
          units: batch.containers * batch.unitsEach,
          arrivesOn: Math.max(1, orderedOn + leadTimeDays - day),
        })),
    ],
    needs: past.needs
      .filter((need) => need.day < day)
      .map((need) => ({ day: need.day - day, units: need.units })),
  };
}

function packsArrived(
  { unitsEach, lifeDays, packMinor, packContainers }: ReplayTerms,
  day: number,
  containers: number,
): Batch {
  return {
    containers,
    unitsEach,
    lastDay: lifeDays >= NEVER ? NEVER : day + lifeDays,
    opened: false,
    costEachMinor: packContainers > 0 ? packMinor / packContainers : null,
  };
}

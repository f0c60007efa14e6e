import { Temporal } from 'temporal-polyfill';
import type { DaysDistribution } from '../projection/item-facts.js';
import { planningAssumptions } from '../settings/planning-assumptions.js';

/** What the supplier says weighs as much as so many orders that were seen. An assumption, no source [C]. */
export const QUOTE_COUNTS_AS_ORDERS = 3;
/** Only the latest orders count: a supplier of years ago is another one. */
export const MOST_ORDERS = 60;
/** What took longer is a slip of the pen, or was no order any more. */
export const LONGEST_LEAD_TIME_DAYS = 365;
/** Later than so many times the days within which 95 % came, an order is taken for lost, and tells nothing. [C] */
const LOST_AFTER_TIMES = 2;
const LOST_AFTER_AT_LEAST_DAYS = 14;

/** Goods of an order that arrived. What comes in parts is several, each with its own arrival. */
export interface OrderArrival {
  orderId: string;
  /** The studio's local days, ISO `YYYY-MM-DD`. */
  orderedOn: string;
  arrivedOn: string;
  pieces: number;
}

/** An order of which something has not come. Days as above. */
export interface AwaitedOrder {
  orderId: string;
  orderedOn: string;
  today: string;
  missingPieces: number;
}

export interface LeadTime {
  /** Calendar days from ordering to arrival. */
  distribution: DaysDistribution;
  /** The same without what is awaited: an awaited order is not to be expected by its own age. */
  arrived: DaysDistribution;
  basis: 'quoted' | 'learnt' | 'quoted and learnt' | 'assumed';
  quotedDays: number | null;
  /** Orders that were counted, those waited for longer than usual included. */
  orders: number;
  /** Arrivals that were not: before their order, or later than anybody waits. */
  leftOut: number;
  medianDays: number;
  /** The smallest number of days within which at least 95 % arrive. */
  days95: number;
}

interface ArrivedOrder {
  orderId: string;
  orderedOn: string;
  parts: { days: number; pieces: number }[];
}

const noneMissing: ReadonlyMap<string, number> = new Map();

/**
 * How long a supplier takes: the days its orders took, and what it says as if it were three orders more. An order counts
 * once; parts of it share its weight by the pieces they brought. Of an order, or the rest of one, that is awaited, and
 * longer than the median, only that is known: its weight falls on the longer times that were seen, or on its age when there
 * is none (Efron's redistribution to the right, 1967). [M] Without orders and without a word of the supplier an assumption
 * stands.
 */
export function leadTimeOf(
  arrivals: readonly OrderArrival[],
  quotedDays: number | null,
  awaited: readonly AwaitedOrder[] = [],
): LeadTime {
  const orders = new Map<string, ArrivedOrder>();
  let leftOut = 0;
  for (const { orderId, orderedOn, arrivedOn, pieces } of arrivals) {
    const days = daysBetween(orderedOn, arrivedOn);
    if (days < 0 || days > LONGEST_LEAD_TIME_DAYS) {
      leftOut += 1;
      continue;
    }
    const part = { days, pieces: Math.max(1, pieces) };
    const order = orders.get(orderId);
    if (order) order.parts.push(part);
    else orders.set(orderId, { orderId, orderedOn, parts: [part] });
  }
  const latest = [...orders.values()].sort(latestFirst).slice(0, MOST_ORDERS);
  const arrived = normalised(weighed(latest, quotedDays, noneMissing));
  const late = lateOrders(arrived, awaited);
  const missing = new Map(late.map(({ orderId, missingPieces }) => [orderId, missingPieces]));
  const weights = weighed(latest, quotedDays, missing);
  for (const { orderId, age, missingPieces } of late) {
    addCensored(weights, age, missingPieces / (missingPieces + piecesOf(orders.get(orderId))));
  }
  const distribution = normalised(weights);
  const seen = new Set(latest.map(({ orderId }) => orderId));
  const counted = latest.length + late.filter(({ orderId }) => !seen.has(orderId)).length;
  return {
    distribution,
    arrived,
    basis: basisOf(counted, quotedDays),
    quotedDays,
    orders: counted,
    leftOut,
    medianDays: daysWithin(distribution, 0.5),
    days95: daysWithin(distribution, 0.95),
  };
}

function latestFirst(one: ArrivedOrder, other: ArrivedOrder): number {
  if (one.orderedOn !== other.orderedOn) return one.orderedOn < other.orderedOn ? 1 : -1;
  return one.orderId < other.orderId ? -1 : 1;
}

/** By days, what so many orders weigh: what is missing of one is left out. */
function weighed(
  orders: readonly ArrivedOrder[],
  quotedDays: number | null,
  missing: ReadonlyMap<string, number>,
): Map<number, number> {
  const weights = new Map<number, number>();
  const add = (days: number, weight: number) => weights.set(days, (weights.get(days) ?? 0) + weight);
  for (const order of orders) {
    const all = piecesOf(order) + (missing.get(order.orderId) ?? 0);
    for (const { days, pieces } of order.parts) add(days, pieces / all);
  }
  if (quotedDays !== null) add(quotedDays, QUOTE_COUNTS_AS_ORDERS);
  else if (orders.length === 0) add(planningAssumptions.leadTimeDays.value, 1);
  return weights;
}

function piecesOf(order: ArrivedOrder | undefined): number {
  return (order?.parts ?? []).reduce((sum, { pieces }) => sum + pieces, 0);
}

/** Orders that are later than usual and not so late that they are lost, with their age, the youngest first. */
function lateOrders(
  seen: DaysDistribution,
  awaited: readonly AwaitedOrder[],
): { orderId: string; age: number; missingPieces: number }[] {
  const usual = daysWithin(seen, 0.5);
  const lost = Math.max(LOST_AFTER_AT_LEAST_DAYS, LOST_AFTER_TIMES * daysWithin(seen, 0.95));
  return awaited
    .map(({ orderId, orderedOn, today, missingPieces }) => ({
      ...{ orderId, missingPieces: Math.max(1, missingPieces) },
      age: daysBetween(orderedOn, today),
    }))
    .filter(({ age }) => age > usual && age <= Math.min(lost, LONGEST_LEAD_TIME_DAYS))
    .sort((one, other) => one.age - other.age)
    .slice(0, MOST_ORDERS);
}

/** Adds so much of an order that took at least so many days. */
function addCensored(weights: Map<number, number>, age: number, share: number): void {
  const longer = [...weights].filter(([days]) => days >= age);
  const total = longer.reduce((sum, [, weight]) => sum + weight, 0);
  if (total === 0) weights.set(age, share);
  else for (const [days, weight] of longer) weights.set(days, weight * (1 + share / total));
}

/** The smallest number of days within which at least this share arrives. */
export function daysWithin({ days, weights }: DaysDistribution, share: number): number {
  let sum = 0;
  for (const [index, each] of days.entries()) {
    sum += weights[index] ?? 0;
    // Sums of weights fall short of the share by rounding alone.
    if (sum >= share - 1e-12) return each;
  }
  return days.at(-1) ?? 0;
}

function basisOf(orders: number, quotedDays: number | null): LeadTime['basis'] {
  if (orders === 0) return quotedDays === null ? 'assumed' : 'quoted';
  return quotedDays === null ? 'learnt' : 'quoted and learnt';
}

function normalised(weights: ReadonlyMap<number, number>): DaysDistribution {
  const sorted = [...weights].sort(([one], [other]) => one - other);
  const total = sorted.reduce((sum, [, weight]) => sum + weight, 0);
  return { days: sorted.map(([days]) => days), weights: sorted.map(([, weight]) => weight / total) };
}

function daysBetween(from: string, to: string): number {
  return Temporal.PlainDate.from(from).until(to, { largestUnit: 'days' }).days;
}

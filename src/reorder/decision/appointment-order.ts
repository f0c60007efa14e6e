import type { DemandModel, ExpectedUse } from '../demand/demand-model.js';
import type { ItemStock, Replenishment } from '../projection/item-facts.js';
import { daysQuantile } from './chances-of-days.js';
import { meanAmount } from './expected-need.js';

/** An order for those who are booked and whom the shelf cannot serve. */
export interface AppointmentOrder {
  /** The day of the plan is 0. */
  orderDay: number;
  packs: number;
  /** The first day on which something is missing. */
  neededDay: number;
  sessions: number;
  units: number;
  /** Even an order on the first day comes after it in one of twenty cases. */
  late: boolean;
}

/** Bookings that are more likely to need the item than not. */
const likely = 0.5;

/**
 * What must be ordered for the sessions and courses that are booked: from the first that cannot be served, all that the
 * same delivery can serve; on the last order day from which nineteen of twenty deliveries are there in time.
 *
 * @returns null when all that is booked can be served
 */
export function orderForBooked(
  demand: DemandModel,
  stock: ItemStock,
  replenishment: Replenishment,
): AppointmentOrder | null {
  const packUnits = replenishment.packContainers * replenishment.unitsEach;
  const lead = daysQuantile(replenishment.leadTime, 0.95);
  const uses = demand.expected
    .filter(({ source, chance }) => source !== 'touch-up' && chance >= likely)
    .map((use) => ({ day: likelyDay(use), units: Math.ceil(meanAmount(use.amount)) }))
    .filter(({ units }) => units > 0)
    .sort((left, right) => left.day - right.day);
  let used = 0;
  let first: { day: number; served: number } | null = null;
  let sessions = 0;
  let units = 0;
  for (const use of uses) {
    const here = unitsUsableOn(stock, use.day);
    used += use.units;
    if (used <= here) continue;
    if (first === null) first = { day: use.day, served: used - use.units };
    // What a later order can still bring, or what this one would not live to see, is not ordered now.
    if (use.day > first.day + Math.min(Math.max(lead, 7), replenishment.lifeDays)) break;
    sessions += 1;
    units = used - Math.max(here, first.served);
  }
  if (first === null) return null;
  const orderDay = lastOrderDay(replenishment.nextOrderDay, Math.max(0, first.day - lead));
  return {
    orderDay: orderDay ?? firstOrderDay(replenishment.nextOrderDay) ?? 0,
    packs: Math.max(1, replenishment.minimumPacks, Math.ceil(units / packUnits)),
    neededDay: first.day,
    sessions,
    units,
    late: orderDay === null || orderDay + lead > first.day,
  };
}

function likelyDay({ firstDay, dayWeights }: ExpectedUse): number {
  let sum = 0;
  for (const [index, weight] of dayWeights.entries()) {
    sum += weight;
    if (sum >= 0.5) return firstDay + index;
  }
  return firstDay;
}

/** By the label and by expected arrival; what spoils before is not counted. */
function unitsUsableOn(stock: ItemStock, day: number): number {
  let units = 0;
  for (const { containers, unitsEach, lastDay } of stock.batches) {
    if (lastDay >= day) units += containers * unitsEach;
  }
  for (const { containers, unitsEach, arrival, lifeDays } of stock.onTheWay) {
    const arrives = daysQuantile(arrival, 0.95);
    if (arrives <= day && arrives + lifeDays >= day) units += containers * unitsEach;
  }
  return units;
}

function lastOrderDay(nextOrderDay: Int32Array, until: number): number | null {
  for (let day = Math.min(until, nextOrderDay.length - 1); day >= 0; day--) {
    if (nextOrderDay[day] === day) return day;
  }
  return null;
}

function firstOrderDay(nextOrderDay: Int32Array): number | null {
  const first = nextOrderDay[0];
  return first === undefined || first >= nextOrderDay.length ? null : first;
}

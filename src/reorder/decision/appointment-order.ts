import type { DemandModel, ExpectedUse } from '../demand/demand-model.js';
import type { ItemStock, Replenishment } from '../projection/item-facts.js';
import { numberOf } from '../projection/random-numbers.js';
import { daysWithin } from '../supply/lead-time.js';
import { meanAmount } from './expected-need.js';
import { type KeptContainers, takeUnits } from './kept-containers.js';

/** An order for those who are booked, or owed a touch-up, and whom the shelf cannot serve. */
export interface AppointmentOrder {
  /** The day of the plan is 0. */
  orderDay: number;
  packs: number;
  /** The first day by which something is missing in more than one of twenty cases. */
  neededDay: number;
  /** What one delivery serves: where something is missing, half of the cases miss no more. */
  sessions: number;
  units: number;
  /** Even an order on the first day comes after it in one of twenty cases. */
  late: boolean;
}

/** What is at stake when an order is placed before it is sure that it is needed. */
export interface AppointmentStakes {
  /** Of one unit that is needed and not there. */
  shortageMinor: number;
  /** Of an order that nobody turns out to need: what of it is wasted. */
  lossMinor: number;
}

/** An order that is more likely to be needed than not is placed. */
const likely = 0.5;
/** Something missing in fewer cases is left to chance, as a late delivery is. */
const hardly = 0.05;
/** Hardly any delivery is faster than one of so many. */
const fastest = 0.05;
/** Days of sessions of which one may need the order; those after it can wait for another. */
const servedDays = 28;
/** Ways it may go that are walked through. */
const walks = 256;
const walkSeed = 1;

/**
 * What must be ordered for sessions and courses that are booked and touch-ups that are owed. Of some the shade is known, of
 * others only how often such sessions take it: so it is not the chance of one that counts, but that any of those within four
 * weeks (and the life of a pack) misses it. The order is placed when that is more likely than not, or when the shortage it
 * is expected to spare costs more than an order that turns out not to be needed, by its chance: what is needed would have
 * to be bought in any case. A shade that one session of many may take is therefore not bought on suspicion.
 *
 * It is placed on the last order day from which nineteen of twenty deliveries are there in time, for all that the same
 * delivery can serve. While another delivery is on the way, what is needed before hardly any new one could be there is not
 * ordered for: it would only be ordered again each day until then.
 *
 * @returns null when nothing has to be ordered
 */
export function orderForBooked(
  demand: DemandModel,
  stock: ItemStock,
  replenishment: Replenishment,
  stakes: AppointmentStakes,
): AppointmentOrder | null {
  const packUnits = replenishment.packContainers * replenishment.unitsEach;
  const lead = daysWithin(replenishment.leadTime, 0.95);
  const paths = missingOnPaths(demand, stock);
  const soonest = stock.onTheWay.length > 0 ? soonestDelivery(replenishment) : 0;
  const start = daysOf(paths).find(
    (day) => day >= soonest && isWorthAnOrder(paths, day, replenishment, stakes),
  );
  if (start === undefined) return null;
  const neededDay =
    daysOf(paths).find((day) => day >= start && shareMissing(paths, start, day) > hardly) ?? start;
  // What a later order can still bring, or what this one would not live to see, is not ordered now.
  const until = neededDay + Math.min(Math.max(lead, 7), Math.max(0, replenishment.lifeDays));
  const served = paths.map((path) => within(path, neededDay, until)).filter(({ length }) => length > 0);
  const units = median(served.map(sumOfUnits));
  const orderDay = lastOrderDay(replenishment.nextOrderDay, Math.max(0, neededDay - lead));
  return {
    orderDay: orderDay ?? firstOrderDay(replenishment.nextOrderDay) ?? 0,
    packs: Math.max(1, replenishment.minimumPacks, Math.ceil(units / packUnits)),
    neededDay,
    sessions: median(served.map(({ length }) => length)),
    units,
    late: orderDay === null || orderDay + lead > neededDay,
  };
}

/** Whether something is likely to be missing of what hardly any order would be there in time for. */
export function isMissingBeforeDelivery(
  demand: DemandModel,
  stock: ItemStock,
  replenishment: Replenishment,
): boolean {
  return shareMissing(missingOnPaths(demand, stock), 0, soonestDelivery(replenishment) - 1) >= likely;
}

/** The first day by which a delivery ordered as soon as possible may be there. */
function soonestDelivery({ nextOrderDay, leadTime }: Replenishment): number {
  return (firstOrderDay(nextOrderDay) ?? 0) + daysWithin(leadTime, fastest);
}

/**
 * Of what is expected of booked sessions, courses and touch-ups, the share that would be ordered for with an empty shelf;
 * 1 when nothing is.
 */
export function shareOrderedFor(
  demand: DemandModel,
  replenishment: Replenishment,
  stakes: AppointmentStakes,
): number {
  const empty = { batches: [], onTheWay: [], openedLifeDays: 0 };
  const paths = missingOnPaths(demand, empty);
  let all = 0;
  let ordered = 0;
  for (const day of daysOf(paths)) {
    const units = paths.reduce((sum, path) => sum + sumOfUnits(within(path, day, day)), 0);
    all += units;
    if (isWorthAnOrder(paths, day, replenishment, stakes)) ordered += units;
  }
  return all > 0 ? ordered / all : 1;
}

interface Missing {
  day: number;
  units: number;
}

function isWorthAnOrder(
  paths: readonly Missing[][],
  day: number,
  { packContainers, unitsEach, lifeDays }: Replenishment,
  { shortageMinor, lossMinor }: AppointmentStakes,
): boolean {
  const until = day + Math.min(servedDays, Math.max(0, lifeDays));
  const chance = shareMissing(paths, day, until);
  if (chance >= likely) return true;
  const units = paths.reduce(
    (sum, path) => sum + Math.min(packContainers * unitsEach, sumOfUnits(within(path, day, until))),
    0,
  );
  return (units / paths.length) * shortageMinor > (1 - chance) * lossMinor;
}

/** What the shelf does not hold for those who come, along each path, by day. */
function missingOnPaths({ expected }: DemandModel, stock: ItemStock): Missing[][] {
  const uses = expected.map((use) => ({ ...use, units: Math.ceil(meanAmount(use.amount)) }));
  const wanting = uses.filter(({ units }) => units > 0);
  return Array.from({ length: walks }, (_, path) => {
    const come = wanting.flatMap((use, index) =>
      numberOf(walkSeed, path, 2 * index) < use.chance
        ? [{ day: dayOf(use, numberOf(walkSeed, path, 2 * index + 1)), units: use.units }]
        : [],
    );
    return missingOf(
      come.sort((left, right) => left.day - right.day),
      stock,
    );
  });
}

/** Opened containers first, then the first to expire; what spoils before it is reached is gone. */
function missingOf(needs: readonly Missing[], { batches, onTheWay, openedLifeDays }: ItemStock): Missing[] {
  let shelf: KeptContainers[] = batches.map(({ containers, unitsEach, lastDay, opened }) => ({
    ...{ containers, units: unitsEach, lastDay, opened },
  }));
  const coming = onTheWay.map(({ containers, unitsEach, arrival, lifeDays }) => {
    const arrives = daysWithin(arrival, 0.95);
    return { arrives, kept: { containers, units: unitsEach, lastDay: arrives + lifeDays, opened: false } };
  });
  coming.sort((left, right) => left.arrives - right.arrives);
  const missing: Missing[] = [];
  for (const { day, units } of needs) {
    for (let next = coming[0]; next !== undefined && next.arrives <= day; next = coming[0]) {
      shelf.push(next.kept);
      coming.shift();
    }
    shelf = shelf.filter((kept) => kept.containers > 0 && kept.units > 0 && kept.lastDay >= day);
    const here = shelf.reduce((sum, kept) => sum + kept.containers * kept.units, 0);
    takeUnits(shelf, Math.min(here, units), day, openedLifeDays);
    if (units > here) missing.push({ day, units: units - here });
  }
  return missing;
}

function dayOf({ firstDay, dayWeights }: ExpectedUse, share: number): number {
  let sum = 0;
  for (const [index, weight] of dayWeights.entries()) {
    sum += weight;
    if (sum > share) return firstDay + index;
  }
  return firstDay + Math.max(0, dayWeights.length - 1);
}

function daysOf(paths: readonly Missing[][]): number[] {
  return [...new Set(paths.flatMap((path) => path.map(({ day }) => day)))].sort((one, other) => one - other);
}

function within(path: readonly Missing[], from: number, until: number): Missing[] {
  return path.filter(({ day }) => day >= from && day <= until);
}

function shareMissing(paths: readonly Missing[][], from: number, until: number): number {
  const missing = paths.filter((path) => path.some(({ day }) => day >= from && day <= until));
  return missing.length / paths.length;
}

function sumOfUnits(missing: readonly Missing[]): number {
  return missing.reduce((sum, { units }) => sum + units, 0);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[sorted.length >> 1] ?? 0;
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

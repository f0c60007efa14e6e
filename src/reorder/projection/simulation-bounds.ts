import type { DemandDraws } from './demand-draws.js';
import { type CostRates, type ItemStock, NEVER, type OrderPolicy, type Replenishment } from './item-facts.js';
import type { Horizon } from './simulate.js';

/** Containers of one batch, and units of one container; more does not fit where it is counted. */
const most = 1_000_000_000;

/** @throws RangeError when a simulation cannot be made of these facts: what was seen and what is allowed */
export function checkSimulation(
  stock: ItemStock,
  replenishment: Replenishment | null,
  draws: DemandDraws,
  rates: CostRates,
  { days, tailDays }: Horizon,
): void {
  whole('The days looked ahead', days, 1, draws.days);
  whole('The days of the tail', tailDays, 0, draws.days - days);
  whole('The days of opened life', stock.openedLifeDays, 0, NEVER);
  for (const { containers, unitsEach, lastDay, costEachMinor } of stock.batches) {
    whole('The containers of a batch', containers, 0, most);
    whole('The units of a container', unitsEach, 0, most);
    whole('The last day of a batch', lastDay, -NEVER, NEVER);
    if (costEachMinor !== null) finite('The cost of a container', costEachMinor);
  }
  for (const { containers, unitsEach, lifeDays } of stock.onTheWay) {
    whole('The containers on the way', containers, 0, most);
    whole('The units of a container on the way', unitsEach, 0, most);
    whole('The days of life of what is on the way', lifeDays, -NEVER, NEVER);
  }
  for (const [name, rate] of Object.entries(rates)) finite(`The rate ${name}`, rate);
  if (!replenishment) return;
  whole('The containers of a pack', replenishment.packContainers, 1, most);
  whole('The units of a container of a pack', replenishment.unitsEach, 1, most);
  whole(
    'The minimum of packs',
    replenishment.minimumPacks,
    0,
    Math.floor(most / replenishment.packContainers),
  );
  whole('The days of life on arrival', replenishment.lifeDays, -NEVER, NEVER);
  for (const each of replenishment.leadTime.days) whole('A lead time in days', each, 0, NEVER / 2);
  for (const { fromPacks, packPriceMinor } of replenishment.prices) {
    whole('The packs from which a price is', fromPacks, 0, most);
    finite('The price of a pack', packPriceMinor);
  }
  if (replenishment.nextOrderDay.length < days) {
    throw new RangeError(
      `Order days of ${replenishment.nextOrderDay.length} days are known: ${days} days are looked ahead.`,
    );
  }
}

/** @throws RangeError when nobody can order like this */
export function checkPolicy({ first, reorderPointUnits, packs }: OrderPolicy, packContainers: number): void {
  const mostPacks = Math.floor(most / packContainers);
  if (first) {
    whole('The day of the first order', first.day, 0, NEVER);
    whole('The packs of the first order', first.packs, 0, mostPacks);
  }
  whole('The packs of a later order', packs, 0, mostPacks);
  if (reorderPointUnits !== null && !(reorderPointUnits <= most)) {
    throw new RangeError(`The reorder point: ${reorderPointUnits} was given; at most ${most} is allowed.`);
  }
}

function whole(what: string, seen: number, least: number, mostAllowed: number): void {
  if (Number.isInteger(seen) && seen >= least && seen <= mostAllowed) return;
  throw new RangeError(
    `${what}: ${seen} was given; a whole number of ${least} to ${mostAllowed} is allowed.`,
  );
}

function finite(what: string, seen: number): void {
  if (!Number.isFinite(seen)) throw new RangeError(`${what}: ${seen} was given; a number is needed.`);
}

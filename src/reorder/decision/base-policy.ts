import type { DemandDraws } from '../projection/demand-draws.js';
import { type CostRates, NEVER, type Replenishment } from '../projection/item-facts.js';
import { daysWithin } from '../supply/lead-time.js';
import { type BatchCost, batchCost } from './batch-cost.js';
import { meanNeedPerDay, needsOverDays, needsOverLeadTime, quantileOf } from './drawn-needs.js';
import type { LeftWorth } from './expected-cost.js';

/** How all later orders are placed, the same whatever is ordered first. */
export interface BasePolicy {
  /** Ordered when the position is at or below it. */
  reorderPointUnits: number;
  packs: number;
  /** The fewest that can be ordered, and the most of which the last may still be used in date. */
  leastPacks: number;
  mostPacks: number;
  packUnits: number;
  /** The smallest order that can be placed, used up alone. */
  smallest: BatchCost;
  /** What a unit that is here and will be used spares in the long run, and how long it may be. */
  left: LeftWorth;
  /** Lead time and the time to the next order day, by quantile. */
  protectionDays95: number;
  /** Days one batch lasts on average; at least 1. */
  cycleDays: number;
  meanNeedPerDay: number;
  /** Needs over the protection interval, over all paths and several days to begin with, by rising amount. */
  protectionNeeds: Float64Array;
}

/**
 * The reorder point is the quantile at the service target of what is needed from one order day until an order of the
 * next one is here: lead time and days between order days. A position one unit above it still meets the target, so it is
 * one below the quantile; and what does not suffice for one usual need counts as nothing. The packs are those with the least cost per unit used, sought from the
 * quantity of Harris 1913 outwards; a batch that is not used in date is dear by its waste.
 *
 * @param target share of the need of a protection interval that should be met, 0 to 1
 * @param usualUnitsPerNeed what one use takes
 * @param coarsePaths how many of the drawn paths batches are compared on; the reorder point comes from all
 */
export function basePolicy(
  replenishment: Replenishment,
  openedLifeDays: number,
  draws: DemandDraws,
  rates: CostRates,
  target: number,
  horizonDays: number,
  usualUnitsPerNeed: number,
  coarsePaths: number,
): BasePolicy {
  const packUnits = replenishment.packContainers * replenishment.unitsEach;
  const reviewDays = daysBetweenOrders(replenishment.nextOrderDay, horizonDays);
  const protectionNeeds = needsOverLeadTime(draws, replenishment.leadTime, reviewDays, horizonDays);
  const needed = Math.max(1, Math.ceil(usualUnitsPerNeed), quantileOf(protectionNeeds, target));
  const reorderPointUnits = needed - 1;
  const { lifeDays } = replenishment;
  const perDay = meanNeedPerDay(draws);
  const leastPacks = Math.max(1, replenishment.minimumPacks);
  const most = mostPacks(replenishment, openedLifeDays, draws, perDay, coarsePaths);
  const costOf = (packs: number) =>
    batchCost(packs, replenishment, openedLifeDays, draws, rates, perDay, coarsePaths);
  const { best, smallest } = bestBatch(replenishment, rates, perDay, leastPacks, most, costOf);
  const lastingDays = perDay > 0 ? (best.packs * packUnits) / perDay : longestStockDays;
  return {
    reorderPointUnits,
    packs: best.packs,
    leastPacks,
    mostPacks: most,
    packUnits,
    smallest,
    left: {
      // Where nothing would be used, having it spares nothing.
      unitMinor: Number.isFinite(best.perUsedUnitMinor) ? best.perUsedUnitMinor : 0,
      needPerDay: perDay,
      // The last of it comes about when the horizon ends.
      lifeDays: lifeDays >= NEVER ? NEVER : Math.max(0, lifeDays - (draws.days - horizonDays)),
      usableShare: best.usedUnits / (best.packs * packUnits),
    },
    protectionDays95: daysWithin(replenishment.leadTime, 0.95) + reviewDays,
    cycleDays: Math.max(1, Math.min(lastingDays, longestStockDays, replenishment.lifeDays + 1)),
    meanNeedPerDay: perDay,
    protectionNeeds,
  };
}

/** Nothing is bought for longer than this, though it may keep. */
const longestStockDays = 1_095;

/**
 * The most packs of which the last may still be used in date, after the drawn days at the mean need; the minimum at least.
 * Of a container that does not keep long once opened most may be discarded, and the next need opens another one.
 */
function mostPacks(
  { packContainers, unitsEach, lifeDays, leadTime, minimumPacks }: Replenishment,
  openedLifeDays: number,
  draws: DemandDraws,
  needPerDay: number,
  paths: number,
): number {
  const days = Math.min(longestStockDays, lifeDays + 1) + daysWithin(leadTime, 0.95);
  const drawn = quantileOf(needsOverDays(draws, days, paths), 0.99);
  const beyond = Math.max(0, days - draws.days) * needPerDay;
  const usesPerDay = (draws.offsets[draws.paths] ?? 0) / Math.max(1, draws.paths * draws.days);
  const discarded = Math.min(days / (openedLifeDays + 1), 2 * usesPerDay * days) * unitsEach;
  return Math.max(minimumPacks, 1, Math.ceil((drawn + beyond + discarded) / (packContainers * unitsEach)));
}

/** Days from one order day to the next, on average over the horizon; 1 when any day will do. */
export function daysBetweenOrders(nextOrderDay: Int32Array, horizonDays: number): number {
  let orderDays = 0;
  const days = Math.min(horizonDays, nextOrderDay.length);
  for (let day = 0; day < days; day++) if (nextOrderDay[day] === day) orderDays++;
  return orderDays === 0 ? Math.max(1, days) : Math.max(1, Math.round(days / orderDays));
}

/** From coarse steps to single packs around the best; of equal ones the smaller. */
function bestBatch(
  replenishment: Replenishment,
  rates: CostRates,
  perDay: number,
  least: number,
  most: number,
  costOf: (packs: number) => BatchCost,
): { best: BatchCost; smallest: BatchCost } {
  const packUnits = replenishment.packContainers * replenishment.unitsEach;
  const tried = new Map<number, BatchCost>();
  const cost = (packs: number): BatchCost => {
    let known = tried.get(packs);
    if (known === undefined) {
      known = costOf(packs);
      tried.set(packs, known);
    }
    return known;
  };
  const packHoldingPerDay = rates.holdingMinorPerDay * packUnits;
  const economic =
    packHoldingPerDay > 0
      ? Math.sqrt((2 * rates.orderMinor * (perDay / packUnits)) / packHoldingPerDay)
      : most;
  const seed = Math.min(most, Math.max(least, Math.round(economic)));
  const around = new Set([least, seed, Math.round(seed / 2), Math.round(seed / 4), seed * 2]);
  for (const { fromPacks } of replenishment.prices) around.add(fromPacks);
  const smallest = cost(least);
  let best = smallest;
  for (const packs of around) {
    if (packs >= least && packs <= most) best = cheaper(best, cost(packs));
  }
  for (let step = Math.max(1, best.packs >> 2); ; step = step >> 1) {
    for (let moved = true; moved; ) {
      const from = best;
      for (const packs of [from.packs - step, from.packs + step]) {
        if (packs >= least && packs <= most) best = cheaper(best, cost(packs));
      }
      moved = best !== from;
    }
    if (step <= 1) return { best, smallest };
  }
}

function cheaper(left: BatchCost, right: BatchCost): BatchCost {
  if (right.perUsedUnitMinor < left.perUsedUnitMinor) return right;
  return right.perUsedUnitMinor === left.perUsedUnitMinor && right.packs < left.packs ? right : left;
}

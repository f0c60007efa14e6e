import type { DemandDraws } from '../projection/demand-draws.js';
import { type CostRates, NEVER, type Replenishment } from '../projection/item-facts.js';
import { daysWithin } from '../supply/lead-time.js';
import type { BasePolicy } from './base-policy.js';
import { needsOverDays, quantileOf, shareBelow } from './drawn-needs.js';

/** One unit more than a protection interval turned out to need. */
export interface OneTooMany {
  minor: number;
  holdingMinor: number;
  /** That it is wasted in the end. */
  wasteChance: number;
  /** Days it is kept. */
  keptDays: number;
}

/**
 * What one missing unit costs, so that meeting the target is just right: the critical ratio of the newsvendor,
 * under / (under + over) = target, gives under = over · target / (1 − target).
 *
 * @param target 0 to 1; at 0 a missing unit costs nothing. 1 has no finite cost: it is taken as what the drawn paths can
 *   tell apart from it, 1 − 1/(paths + 1), so that the largest need of all paths is covered.
 */
export function shortageFromTarget(overMinor: number, target: number, paths: number): number {
  if (target <= 0) return 0;
  const share = Math.min(target, 1 - 1 / (paths + 1));
  return (overMinor * share) / (1 - share);
}

/**
 * What one unit too many costs: it lies there until the next order would have brought it, for as long as a batch lasts
 * (its price is bound so long: holding stands for the capital too), and it is lost when it expires before it is used.
 *
 * In the limit of the newsvendor – what is left over is worth nothing, as when the life ends with the protection
 * interval – the chance of waste is 1 and this is the price of a unit and its keeping. In that of a batch that keeps,
 * ordered again and again, it is h·Q/d, and with the critical ratio the chance of running short in a cycle is that at
 * which one unit more of reorder point costs as much as it brings.
 */
export function oneTooMany(
  base: BasePolicy,
  replenishment: Replenishment,
  draws: DemandDraws,
  rates: CostRates,
  target: number,
  paths: number,
): OneTooMany {
  const { lifeDays, leadTime } = replenishment;
  const keptDays = Math.max(1, Math.min(base.cycleDays, lifeDays >= NEVER ? base.cycleDays : lifeDays));
  let wasteChance = 0;
  if (lifeDays < NEVER) {
    // The last unit of what is there when the order is placed and of the order itself: FEFO uses it last.
    const days = Math.round(daysWithin(leadTime, 0.5)) + lifeDays + 1;
    const position = base.reorderPointUnits + 1 + base.packs * base.packUnits;
    const leftOver = Math.max(target, shareBelow(base.protectionNeeds, base.reorderPointUnits + 1), 1e-9);
    wasteChance = Math.min(1, shareNotUsed(draws, days, position, base.meanNeedPerDay, paths) / leftOver);
  }
  const holdingMinor = rates.holdingMinorPerDay * keptDays;
  return { minor: holdingMinor + wasteChance * rates.unitMinor, holdingMinor, wasteChance, keptDays };
}

/** The chance that less is needed over the days; those beyond the drawn ones at the mean. */
function shareNotUsed(
  draws: DemandDraws,
  days: number,
  units: number,
  perDay: number,
  paths: number,
): number {
  const seen = Math.min(days, draws.days);
  const beyond = (days - seen) * perDay;
  return shareBelow(needsOverDays(draws, seen, paths), units - beyond);
}

/** What is needed at most of all drawn paths over the protection interval. */
export function largestNeed(base: BasePolicy): number {
  return quantileOf(base.protectionNeeds, 1);
}

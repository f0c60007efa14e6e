import type { DemandDraws } from '../projection/demand-draws.js';
import type { Batch, ItemStock, Replenishment } from '../projection/item-facts.js';
import { Simulation } from '../projection/simulate.js';
import { daysWithin } from '../supply/lead-time.js';
import { orderNothing } from './batch-cost.js';
import { coarsePathsOf } from './weigh-offers.js';

interface Needed {
  stock: ItemStock;
  draws: DemandDraws;
}

const free = { unitMinor: 0, orderMinor: 0, shortageMinor: 0, holdingMinorPerDay: 0 };

/** Days until it runs short for the first time, on average, as far as needs were drawn; beyond the horizon too. */
export function coverDays({ stock, draws }: Needed): number {
  const simulation = new Simulation(stock, null, draws, free, { days: draws.days, tailDays: 0 });
  return simulation.evaluate(orderNothing, { from: 0, to: coarsePathsOf(draws) }).daysOfCover.mean;
}

/**
 * The same with one order, which takes its usual time: until it runs short once the delivery is here. Where it runs short
 * before, nothing is left when the delivery comes, and it lasts as long as the delivery alone, or with what else comes on
 * its usual day.
 */
export function coverDaysWith(
  { stock, draws }: Needed,
  replenishment: Replenishment,
  order: { day: number; packs: number },
): number {
  const lead = daysWithin(replenishment.leadTime, 0.5);
  const arrival = order.day + lead;
  const usual: Replenishment = { ...replenishment, leadTime: { days: [lead], weights: [1] } };
  const days = Math.min(draws.days, replenishment.nextOrderDay.length);
  const policy = { first: order, reorderPointUnits: null, packs: 0 };
  const range = { from: 0, to: coarsePathsOf(draws) };
  const outcomeOf = (from: ItemStock) =>
    new Simulation(from, usual, draws, free, { days, tailDays: 0 }).evaluate(policy, range);
  const outcome = outcomeOf(stock);
  let before = 0;
  let daysBefore = 0;
  for (let day = 0; day < Math.min(arrival, days); day++) {
    const paths = outcome.firstShortCounts[day] ?? 0;
    before += paths;
    daysBefore += paths * day;
  }
  if (before === 0) return outcome.daysOfCover.mean;
  const lasting = (onTheWay: ItemStock['onTheWay'], from: number) =>
    outcomeOf({ ...stock, onTheWay, batches: [enoughUntil(from - 1)] }).daysOfCover.mean;
  let after = lasting([], arrival);
  if (stock.onTheWay.length > 0) {
    const comings = stock.onTheWay.map((each) => daysWithin(each.arrival, 0.5));
    const onTheWay = stock.onTheWay.map((each, index) => ({
      ...each,
      arrival: { days: [comings[index] ?? 0], weights: [1] },
    }));
    after = Math.max(after, lasting(onTheWay, Math.min(arrival, ...comings)));
  }
  const sumOfOthers = outcome.daysOfCover.mean * outcome.paths - daysBefore;
  return (sumOfOthers + before * after) / outcome.paths;
}

/** More than anybody needs, and nothing of it is left the day after. */
function enoughUntil(lastDay: number): Batch {
  return { containers: 1, unitsEach: 1_000_000_000, lastDay, opened: true, costEachMinor: null };
}

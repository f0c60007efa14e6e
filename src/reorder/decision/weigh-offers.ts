import { type DemandDraws, drawDemand } from '../projection/demand-draws.js';
import type { CostRates } from '../projection/item-facts.js';
import { firstShortDay, type Outcome } from '../projection/outcome.js';
import { Simulation } from '../projection/simulate.js';
import { daysWithin } from '../supply/lead-time.js';
import { type BasePolicy, basePolicy } from './base-policy.js';
import type { DecisionSettings, ItemDecisionFacts, ItemOffer } from './decision-facts.js';
import { FirstOrderSearch } from './first-order.js';
import type { Trial } from './order-trials.js';
import { type OneTooMany, oneTooMany, shortageFromTarget } from './shortage-cost.js';

/** An offer with all that is needed to weigh orders of it. */
export interface WeighedOffer {
  offer: ItemOffer;
  rates: CostRates;
  base: BasePolicy;
  orderDays: number[];
  /** Day by which an order should be placed so that the target is met; negative: it is past. */
  dueDay: number;
  dueIndex: number;
  search: FirstOrderSearch;
  best: Trial;
}

/** Paths are drawn so many times over until they suffice, and uses of all paths together at most. */
const timesMorePaths = 4;
const mostUses = 2_000_000;
const mostPathsDrawn = 32_000;

/**
 * While the paths are too few to tell the best first order from others that may be clearly cheaper, it is sought among
 * these on more of them.
 */
export function bestOrderOf(facts: ItemDecisionFacts, weighed: WeighedOffer): WeighedOffer {
  const { draws, demand, stock, horizonDays } = facts;
  const { offer, rates } = weighed;
  const horizon = { days: horizonDays, tailDays: draws.days - horizonDays };
  const usesOfPath = Math.max(1, (draws.offsets[draws.paths] ?? 0) / draws.paths);
  const mostPaths = demand.days === draws.days ? Math.min(mostPathsDrawn, mostUses / usesOfPath) : 0;
  let { search, best } = weighed;
  for (;;) {
    const paths = Math.min(mostPaths, search.simulation.draws.paths * timesMorePaths);
    if (paths < search.simulation.draws.paths * 2) break;
    if (!search.isUncertain(best)) break;
    const contenders = search.contenders();
    // The paths so far are the first ones of the longer draw.
    const longer = drawDemand(demand, { paths: Math.floor(paths), seed: draws.seed });
    search = search.on(new Simulation(stock, offer.replenishment, longer, rates, horizon));
    best = search.finest(contenders);
  }
  return { ...weighed, search, best };
}

export interface WeighedShortage {
  from: 'set by hand' | 'service target';
  minorPerUnit: number;
  oneTooMany: OneTooMany | null;
}

/** Paths of the coarse looks. */
export const coarsePathsOf = (draws: DemandDraws) => Math.min(200, draws.paths);

/** More offers are not searched: those with the least cost in the long run are. */
const mostOffers = 4;

/**
 * Searches the best first order of each offer. All are weighed with the same price of comparison and the same cost of a
 * missing unit, that of the offer that is cheapest in the long run.
 *
 * @param referenceMinor of one unit: waste, holding and price differences are reckoned from it
 * @param offers at least one, each with an order day within the horizon
 */
export function weighOffers(
  facts: ItemDecisionFacts,
  settings: DecisionSettings,
  offers: readonly ItemOffer[],
  referenceMinor: number,
  usualUnitsPerNeed: number,
  nothing: Outcome,
): { weighed: WeighedOffer[]; shortage: WeighedShortage } {
  const { draws, stock, horizonDays } = facts;
  const target = settings.serviceTargetPerMille / 1_000;
  const coarsePaths = coarsePathsOf(draws);
  const prepared = offers.map((offer) => {
    const rates: CostRates = {
      unitMinor: referenceMinor,
      orderMinor: settings.orderCostMinor + offer.deliveryCostMinor / offer.linesPerDelivery,
      shortageMinor: 0,
      holdingMinorPerDay: (referenceMinor * settings.holdingPerYearPerMille) / 1_000 / 365,
    };
    const { replenishment } = offer;
    const base = basePolicy(
      replenishment,
      stock.openedLifeDays,
      draws,
      rates,
      target,
      horizonDays,
      usualUnitsPerNeed,
      coarsePaths,
    );
    return { offer, rates, base };
  });
  prepared.sort((left, right) => left.base.left.unitMinor - right.base.left.unitMinor);
  const cheapest = prepared[0];
  if (cheapest === undefined) throw new RangeError('There is no offer to weigh.');
  const shortage = weighShortage(cheapest, draws, settings, usualUnitsPerNeed, target);
  const weighed = prepared.slice(0, mostOffers).map(({ offer, base, rates }) => {
    const withShortage = { ...rates, shortageMinor: shortage.minorPerUnit };
    // What is left spares at most what going without would cost.
    const unitMinor = Math.min(base.left.unitMinor, shortage.minorPerUnit);
    const capped = { ...base, left: { ...base.left, unitMinor } };
    return searchOffer(facts, offer, capped, withShortage, target, nothing);
  });
  weighed.sort((left, right) => left.best.costMinor - right.best.costMinor);
  return { weighed, shortage };
}

function weighShortage(
  { offer, base, rates }: { offer: ItemOffer; base: BasePolicy; rates: CostRates },
  draws: DemandDraws,
  settings: DecisionSettings,
  usualUnitsPerNeed: number,
  target: number,
): WeighedShortage {
  if (settings.shortageCostMinor !== null) {
    const minorPerUnit = settings.shortageCostMinor / Math.max(1, usualUnitsPerNeed);
    return { from: 'set by hand', minorPerUnit, oneTooMany: null };
  }
  const over = oneTooMany(base, offer.replenishment, draws, rates, target, draws.paths);
  return {
    from: 'service target',
    minorPerUnit: shortageFromTarget(over.minor, target, draws.paths),
    oneTooMany: over,
  };
}

function searchOffer(
  { draws, stock, horizonDays }: ItemDecisionFacts,
  offer: ItemOffer,
  base: BasePolicy,
  rates: CostRates,
  target: number,
  nothing: Outcome,
): WeighedOffer {
  const { replenishment } = offer;
  const orderDays = orderDaysWithin(replenishment.nextOrderDay, horizonDays);
  const shortDay = firstShortDay(nothing, Math.max(1 - target, 1 / draws.paths)) ?? horizonDays;
  const dueDay = shortDay - daysWithin(replenishment.leadTime, 0.95);
  const dueIndex = indexBy(orderDays, dueDay);
  const horizon = { days: horizonDays, tailDays: draws.days - horizonDays };
  const search = new FirstOrderSearch({
    simulation: new Simulation(stock, replenishment, draws, rates, horizon),
    replenishment,
    base,
    rates,
    orderDays,
    dueIndex,
    coarsePaths: coarsePathsOf(draws),
  });
  const best = search.fine(search.coarse());
  return { offer, rates, base, orderDays, dueDay, dueIndex, search, best };
}

/** Days on which an order can be placed. */
export function orderDaysWithin(nextOrderDay: Int32Array, horizonDays: number): number[] {
  const days: number[] = [];
  for (let day = 0; day < Math.min(horizonDays, nextOrderDay.length); day++) {
    if (nextOrderDay[day] === day) days.push(day);
  }
  return days;
}

/** The last of the days that is not after the given one; the first when all are. */
function indexBy(days: readonly number[], day: number): number {
  let index = 0;
  while (index + 1 < days.length && (days[index + 1] ?? 0) <= day) index++;
  return index;
}

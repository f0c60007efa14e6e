import type { DemandDraws } from '../projection/demand-draws.js';
import {
  type Batch,
  type CostRates,
  type ItemStock,
  NEVER,
  type Replenishment,
} from '../projection/item-facts.js';
import { type Horizon, Simulation } from '../projection/simulate.js';
import { packPriceMinor } from '../supply/pack-cost.js';
import { usedLater } from './expected-cost.js';

/** Nothing is ordered any more. */
export const orderNothing = { first: null, reorderPointUnits: null, packs: 0 } as const;

/** What it costs to have units by ordering so many packs again and again, beyond the price of what is used. */
export interface BatchCost {
  packs: number;
  /** Order, holding, waste and price difference of one such batch over the units of it that are used. */
  perUsedUnitMinor: number;
  usedUnits: number;
  wastedUnits: number;
}

/**
 * Puts so many packs on an empty shelf on day 0 and lets them be used or expire: one turn of ordering them again and
 * again (by the renewal-reward theorem its cost over its use is that of the long run). With even demand and no expiry it
 * is K/Q + h·Q/2d of Harris 1913.
 *
 * @returns with a cost per unit of `Infinity` when nothing of it is used
 */
export function batchCost(
  packs: number,
  replenishment: Replenishment,
  openedLifeDays: number,
  draws: DemandDraws,
  rates: CostRates,
  needPerDay: number,
  paths: number,
): BatchCost {
  const units = packs * replenishment.packContainers * replenishment.unitsEach;
  const stock = {
    batches: [shelfOf(packs, replenishment)],
    onTheWay: [],
    openedLifeDays,
  } satisfies ItemStock;
  const horizon: Horizon = { days: draws.days, tailDays: 0 };
  const outcome = new Simulation(stock, null, draws, rates, horizon).evaluate(orderNothing, {
    from: 0,
    to: paths,
  });
  const packUnits = replenishment.packContainers * replenishment.unitsEach;
  const price = packPriceMinor(replenishment.prices, packs);
  const used = outcome.usedUnits.mean;
  const later = usedLater(outcome.unitsAtEnd.mean, {
    needPerDay,
    usableShare: 1,
    lifeDays: replenishment.lifeDays >= NEVER ? NEVER : Math.max(0, replenishment.lifeDays - draws.days),
  });
  const usedInAll = used + later.usedUnits;
  const wastedInAll = outcome.wastedUnits.mean + later.wastedUnits;
  const costMinor =
    rates.orderMinor +
    (outcome.heldUnitDays.mean + later.unitDays) * rates.holdingMinorPerDay +
    (wastedInAll * price) / packUnits +
    (price - rates.unitMinor * packUnits) * packs;
  return {
    packs,
    perUsedUnitMinor: usedInAll > 0 ? costMinor / usedInAll : Number.POSITIVE_INFINITY,
    usedUnits: Math.min(usedInAll, units),
    wastedUnits: wastedInAll,
  };
}

/** So many packs as they lie on the shelf, just arrived and sealed. */
export function shelfOf(packs: number, { packContainers, unitsEach, lifeDays }: Replenishment): Batch {
  return {
    containers: packs * packContainers,
    unitsEach,
    lastDay: lifeDays,
    opened: false,
    costEachMinor: null,
  };
}

import type { DemandDraws } from './demand-draws.js';
import type { CostRates, ItemStock, OrderPolicy, Replenishment } from './item-facts.js';
import type { Outcome } from './outcome.js';

/** Orders are placed on days 0 to days − 1; for the tail's days only what is there or coming is used up or spoils. */
export interface Horizon {
  days: number;
  tailDays: number;
}

/** Which paths are tried, from the first up to, not including, the last; all when not given. */
export interface PathRange {
  from: number;
  to: number;
}

/**
 * One item's stock on the drawn paths, under one policy after another. A day goes: arrivals, then orders (of no lead
 * time they arrive at once), then needs, in the evening discards. Opened containers are used first, then sealed ones,
 * each by first expiry. What is not there is lost. Orders are placed on order days when what is usable and on the way is
 * at or below the reorder point: the policy's packs, the minimum at least, or as many as lift it above the point. A
 * policy's first order is placed on the first order day on or after its day, whatever is there; the reorder point
 * counts from the day after (from day 0 when there is no first order).
 */
export class Simulation {
  /**
   * @param replenishment null when nothing can be ordered
   * @throws RangeError when the draws end before horizon and tail do, or a fact is no whole number within bounds
   */
  constructor(
    readonly stock: ItemStock,
    readonly replenishment: Replenishment | null,
    readonly draws: DemandDraws,
    readonly rates: CostRates,
    readonly horizon: Horizon,
  ) {}

  evaluate(_policy: OrderPolicy, _range: PathRange = { from: 0, to: this.draws.paths }): Outcome {
    throw new Error('not yet');
  }
}

/** One policy tried once; for several of one item make a `Simulation` and keep it. */
export function evaluatePolicy(
  stock: ItemStock,
  replenishment: Replenishment | null,
  draws: DemandDraws,
  policy: OrderPolicy,
  rates: CostRates,
  horizon: Horizon,
): Outcome {
  return new Simulation(stock, replenishment, draws, rates, horizon).evaluate(policy);
}

import normalProbability from '@stdlib/stats-base-dists-normal-cdf';
import normalDensity from '@stdlib/stats-base-dists-normal-pdf';
import normalQuantile from '@stdlib/stats-base-dists-normal-quantile';

/** Closed answers of the textbook, for what a simulation is begun with and checked against. All costs in one currency. */

/** What one order costs, and what holding one unit costs in the time in which `demand` units are needed. */
export interface LotSizeFacts {
  orderCost: number;
  holdingCost: number;
  demand: number;
}

/**
 * The economic order quantity, Harris 1913, and its cost: of even demand without lead time, where nothing expires.
 *
 * @throws RangeError when something is not above 0
 */
export function economicOrderQuantity(facts: LotSizeFacts): { quantity: number; cost: number } {
  const { orderCost, holdingCost, demand } = facts;
  aboveZero('The cost of an order', orderCost);
  aboveZero('The cost of holding', holdingCost);
  aboveZero('The demand', demand);
  const quantity = Math.sqrt((2 * orderCost * demand) / holdingCost);
  return { quantity, cost: lotSizeCost(facts, quantity) };
}

/** What ordering so many each time costs, in the time in which `demand` units are needed. */
export function lotSizeCost({ orderCost, holdingCost, demand }: LotSizeFacts, quantity: number): number {
  aboveZero('The quantity of an order', quantity);
  return (orderCost * demand) / quantity + (holdingCost * quantity) / 2;
}

/**
 * The share of paths in which a quantity should be enough when one unit too many costs `over` and one too few `under`.
 *
 * @throws RangeError when one is below 0 or both are 0
 */
export function criticalRatio(over: number, under: number): number {
  if (!(over >= 0 && under >= 0 && over + under > 0 && over + under < Infinity)) {
    throw new RangeError(
      `One too many costs ${over}, one too few ${under}: at least 0 each, not both 0, is allowed.`,
    );
  }
  return under / (over + under);
}

/** The quantity of least expected cost for one period of normal demand, and that cost. */
export function newsvendor(
  mean: number,
  deviation: number,
  over: number,
  under: number,
): { quantity: number; cost: number } {
  aboveZero('The deviation of the demand', deviation);
  const z = normalQuantile(criticalRatio(over, under), 0, 1);
  // Both sides of what is too many and too few meet at the density.
  return { quantity: mean + z * deviation, cost: (over + under) * deviation * normalDensity(z, 0, 1) };
}

/** The stock at which to order so that a fixed lead time of normal daily demand is met with the given chance. */
export function normalReorderPoint(
  dailyMean: number,
  dailyDeviation: number,
  leadTimeDays: number,
  chance: number,
): number {
  aboveZero('The lead time in days', leadTimeDays);
  return leadTimeDays * dailyMean + normalQuantile(chance, 0, 1) * dailyDeviation * Math.sqrt(leadTimeDays);
}

/** Expected demand above z of a standard normal: the unit normal loss G. */
export function unitNormalLoss(z: number): number {
  return normalDensity(z, 0, 1) - z * normalProbability(-z, 0, 1);
}

function aboveZero(what: string, seen: number): void {
  if (!(seen > 0 && seen < Infinity)) throw new RangeError(`${what} is ${seen}: more than 0 is allowed.`);
}

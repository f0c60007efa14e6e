import type { PlanItemFacts, PlanOffer } from '../plan/item-line.js';
import { daysWithin } from '../supply/lead-time.js';
import { packPriceMinor } from '../supply/pack-cost.js';
import type { ReplayTerms } from './replay-item.js';

/** The offer whose units cost least at its smallest order; undefined: nobody offers the item. */
export function cheapestOffer(offers: readonly PlanOffer[]): PlanOffer | undefined {
  return [...offers]
    .filter(({ prices, packContainers, unitsEach }) => prices.length > 0 && packContainers * unitsEach > 0)
    .sort((one, other) => unitMinor(one) - unitMinor(other) || (one.offerId < other.offerId ? -1 : 1))[0];
}

/**
 * How an item is had throughout a replay: by today's cheapest offer, with the usual lead time. What a missing unit costs is
 * left at nothing: it is added afterwards, as the plan itself weighed it.
 */
export function usualTerms(
  offer: PlanOffer,
  { orderCostMinor, holdingPerYearPerMille }: PlanItemFacts['settings'],
  reviewEveryDays: number,
): ReplayTerms {
  const { packContainers, unitsEach, minimumPacks, prices, leadTime, lifeDays } = offer;
  return {
    packContainers,
    unitsEach,
    packMinor: packPriceMinor(prices, Math.max(1, minimumPacks)),
    leadTimeDays: daysWithin(leadTime, 0.5),
    lifeDays,
    orderMinor: orderCostMinor + offer.deliveryCostMinor / Math.max(1, offer.linesPerDelivery),
    shortageMinor: 0,
    holdingMinorPerUnitDay: (unitMinor(offer) * holdingPerYearPerMille) / 1_000 / 365,
    reviewEveryDays,
  };
}

function unitMinor({ prices, minimumPacks, packContainers, unitsEach }: PlanOffer): number {
  return packPriceMinor(prices, Math.max(1, minimumPacks)) / (packContainers * unitsEach);
}

import type { CostRates } from '../projection/item-facts.js';
import type { Outcome } from '../projection/outcome.js';
import { figure } from './figure.js';
import type { ExpectedCost } from './item-decision-result.js';

/**
 * What a candidate is expected to cost, in minor units:
 *
 *   waste · its cost + shortage · unmet units + order cost · orders + holding · unit-days
 *   + (pack price − price of comparison) · packs − worth of a unit left · units left at the horizon that will be used.
 *
 * What is used is paid for under every candidate alike and left out. What is left at the horizon spares its part of a
 * later order: a unit is worth what having it costs in the long run, beyond its price (see `base-policy.ts`); since that
 * holds the price of keeping it until it is used, the unit-days of the tail count as well. With even demand, without
 * expiry and chance, this is minimal at the quantity of Harris 1913, whatever the horizon.
 */
export function totalCostMinor(outcome: Outcome, rates: CostRates, leftUnitMinor: number): number {
  return (
    outcome.wastedMinor.mean +
    outcome.unmetUnits.mean * rates.shortageMinor +
    outcome.orders.mean * rates.orderMinor +
    (outcome.heldUnitDays.mean + outcome.heldInTailUnitDays.mean) * rates.holdingMinorPerDay +
    outcome.priceDifferenceMinor.mean -
    unitsLeft(outcome) * leftUnitMinor
  );
}

/** Units here or on the way when the horizon ends, without those that spoil in the tail. */
export function unitsLeft(outcome: Outcome): number {
  const left = outcome.unitsAtHorizon.mean + outcome.onTheWayAtHorizon.mean - outcome.wastedInTailUnits.mean;
  return Math.max(0, left);
}

/** The same cost with its parts, as it is shown. */
export function expectedCost(outcome: Outcome, rates: CostRates, leftUnitMinor: number): ExpectedCost {
  return {
    totalMinor: figure(totalCostMinor(outcome, rates, leftUnitMinor)),
    wasteMinor: figure(outcome.wastedMinor.mean),
    shortageMinor: figure(outcome.unmetUnits.mean * rates.shortageMinor),
    orderMinor: figure(outcome.orders.mean * rates.orderMinor),
    holdingMinor: figure(
      (outcome.heldUnitDays.mean + outcome.heldInTailUnitDays.mean) * rates.holdingMinorPerDay,
    ),
    priceMinor: figure(outcome.priceDifferenceMinor.mean),
    leftMinor: figure(-unitsLeft(outcome) * leftUnitMinor),
    standardErrorMinor: figure(outcome.costMinor.standardError),
  };
}

import { type CostRates, NEVER } from '../projection/item-facts.js';
import type { Outcome } from '../projection/outcome.js';
import { figure } from './figure.js';
import type { ExpectedCost } from './item-decision-result.js';

/** What units that are here and will be used are worth when the horizon has ended. */
export interface LeftWorth {
  /** What having a unit costs in the long run beyond its price: a unit that is left spares it. */
  unitMinor: number;
  needPerDay: number;
  /** Days after the tail in which what it leaves may still be used at most; NEVER when nothing limits it. */
  lifeDays: number;
  /** Of a batch, the share that is used in date: of what the tail leaves no more is. */
  usableShare: number;
}

/**
 * What a candidate is expected to cost, in minor units:
 *
 *   waste · its cost + shortage · unmet units + order cost · orders + holding · unit-days
 *   + (pack price − price of comparison) · packs − worth of a unit left · units left at the horizon that will be used.
 *
 * What is used is paid for under every candidate alike and left out. What is left at the horizon spares its part of a
 * later order: a unit is worth what having it costs in the long run, beyond its price (see `base-policy.ts`); since that
 * holds the price of keeping it until it is used, unit-days count until then: those of the tail as they come, and what
 * even the tail leaves as it would be used at the mean need. With even demand, without expiry and chance, this is minimal
 * at the quantity of Harris 1913, whatever the horizon.
 */
export function totalCostMinor(outcome: Outcome, rates: CostRates, left: LeftWorth): number {
  const { wasteMinor, shortageMinor, orderMinor, holdingMinor, priceMinor, leftMinor } = parts(
    outcome,
    rates,
    left,
  );
  return wasteMinor + shortageMinor + orderMinor + holdingMinor + priceMinor + leftMinor;
}

/** The same cost with its parts, as it is shown. */
export function expectedCost(outcome: Outcome, rates: CostRates, left: LeftWorth): ExpectedCost {
  const cost = parts(outcome, rates, left);
  return {
    totalMinor: figure(totalCostMinor(outcome, rates, left)),
    wasteMinor: figure(cost.wasteMinor),
    shortageMinor: figure(cost.shortageMinor),
    orderMinor: figure(cost.orderMinor),
    holdingMinor: figure(cost.holdingMinor),
    priceMinor: figure(cost.priceMinor),
    leftMinor: figure(cost.leftMinor),
    standardErrorMinor: figure(outcome.costMinor.standardError),
  };
}

function parts(outcome: Outcome, rates: CostRates, left: LeftWorth) {
  const { unitsAtEnd, onTheWayAtEnd, heldUnitDays, heldInTailUnitDays } = outcome;
  const later = usedLater(unitsAtEnd.mean + onTheWayAtEnd.mean, left);
  const heldInAll = heldUnitDays.mean + heldInTailUnitDays.mean + later.unitDays;
  return {
    wasteMinor: outcome.wastedMinor.mean + later.wastedUnits * rates.unitMinor,
    shortageMinor: outcome.unmetUnits.mean * rates.shortageMinor,
    orderMinor: outcome.orders.mean * rates.orderMinor,
    holdingMinor: heldInAll * rates.holdingMinorPerDay,
    priceMinor: outcome.priceDifferenceMinor.mean,
    leftMinor: -unitsLeft(outcome, left) * left.unitMinor,
  };
}

/** Units that are left when the horizon ends and will be used. */
export function unitsLeft({ unitsAtEnd, onTheWayAtEnd, usedInTailUnits }: Outcome, left: LeftWorth): number {
  return usedInTailUnits.mean + usedLater(unitsAtEnd.mean + onTheWayAtEnd.mean, left).usedUnits;
}

/** What becomes of units that are left when the drawn days end, at the mean need: used, or over when their life is. */
export function usedLater(
  units: number,
  { needPerDay, lifeDays, usableShare }: Omit<LeftWorth, 'unitMinor'>,
): { usedUnits: number; wastedUnits: number; unitDays: number } {
  const most = lifeDays >= NEVER ? Number.POSITIVE_INFINITY : needPerDay * Math.max(0, lifeDays);
  // Without any need nothing is used; it is over at once, and not held for ever.
  const usedUnits = needPerDay > 0 ? Math.min(units * usableShare, most) : 0;
  const wastedUnits = units - usedUnits;
  const usingDays = needPerDay > 0 ? usedUnits / needPerDay : 0;
  return { usedUnits, wastedUnits, unitDays: (usedUnits * usingDays) / 2 + wastedUnits * usingDays };
}

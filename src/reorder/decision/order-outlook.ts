import type { OrderPolicy } from '../projection/item-facts.js';
import { Simulation } from '../projection/simulate.js';
import { coverDaysWith } from './cover-days.js';
import type { ItemDecisionFacts } from './decision-facts.js';
import { unitCost } from './item-decision.js';
import type { ItemDecision, Outlook } from './item-decision-result.js';
import { outlookOf } from './outlook.js';
import { offerWithinBounds } from './settings-within-bounds.js';

/** An order of an item, whatever the item by itself would order. */
export interface FollowedOrder {
  offerId: string;
  packs: number;
  /** The day of the plan is 0. */
  day: number;
}

/** The order, and later ones by the reorder point of an item that is kept in stock. */
export function followedPolicy(
  { reorderPoint }: Pick<ItemDecision, 'reorderPoint'>,
  { packs, day }: FollowedOrder,
): OrderPolicy {
  return {
    first: { day, packs },
    reorderPointUnits: reorderPoint?.units ?? null,
    packs: reorderPoint?.packs ?? 0,
  };
}

/**
 * What is to be expected of an item with an order other than its own, such as one that a supplier's basket made of it.
 *
 * @throws RangeError for an offer that the item does not have
 */
export function orderOutlook(
  facts: ItemDecisionFacts,
  decided: Pick<ItemDecision, 'reorderPoint' | 'effort'>,
  { offerId, packs, day }: FollowedOrder,
): Outlook {
  const { stock, draws, plannedOn } = facts;
  const offers = facts.offers.map((each) => offerWithinBounds(each).offer);
  const offer = offers.find((each) => each.offerId === offerId);
  if (offer === undefined) throw new RangeError(`The item has no offer ${offerId}.`);
  const { horizonDays, tailDays } = decided.effort;
  const rates = {
    unitMinor: unitCost(stock, offers, []),
    orderMinor: 0,
    shortageMinor: 0,
    holdingMinorPerDay: 0,
  };
  const outcome = new Simulation(stock, offer.replenishment, draws, rates, {
    days: horizonDays,
    tailDays,
  }).evaluate(followedPolicy(decided, { offerId, packs, day }));
  return outlookOf(outcome, coverDaysWith(facts, offer.replenishment, { day, packs }), plannedOn);
}

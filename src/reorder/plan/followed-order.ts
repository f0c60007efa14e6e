import type { PlannedOrder } from '../decision/item-decision-result.js';
import type { FollowedOrder } from '../decision/order-outlook.js';
import { dayOfDate } from '../decision/plan-days.js';
import type { FinishedLine } from './finished-lines.js';

/**
 * The order that a basket made of an item.
 *
 * @param own what the item by itself would order; null: nothing
 * @returns null: nothing is ordered, or what the item by itself would order, on its day
 */
export function followedOrder(
  plannedOn: string,
  { packs, offerId, orderOn }: Pick<FinishedLine, 'packs' | 'offerId' | 'orderOn'>,
  own: Pick<PlannedOrder, 'packs' | 'offerId' | 'on'> | null,
): FollowedOrder | null {
  if (packs === 0 || offerId === null || orderOn === null) return null;
  if (own !== null && own.packs === packs && own.offerId === offerId && own.on === orderOn) return null;
  return { offerId, packs, day: dayOfDate(plannedOn, orderOn) };
}

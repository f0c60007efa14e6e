import type { Reason } from '../decision/explanation.js';
import { figure } from '../decision/figure.js';
import type { ItemDecision, PlannedOrder } from '../decision/item-decision-result.js';
import { dateOfDay } from '../decision/plan-days.js';
import type { FollowedItem } from './item-line.js';

/**
 * The decision with the order that the supplier's basket made of it: what is to be expected of it, and the reasons that
 * speak of these. Costs and what they are compared with stay those of the item by itself.
 *
 * @param followed null: it is ordered as it would be by itself
 */
export function followedDecision(
  own: ItemDecision,
  order: PlannedOrder,
  followed: FollowedItem | null,
  plannedOn: string,
): ItemDecision {
  const after = followed?.after ?? own.after;
  const { packs, containers, units, on, priceMinor } = order;
  const said: Reason[] = [
    { code: 'order', packs, containers, units, on, priceMinor },
    {
      code: 'covers',
      days: figure(after.coverDays),
      until: dateOfDay(plannedOn, Math.round(after.coverDays)),
      chanceAfter: after.shortChance,
    },
  ];
  // That it comes too late was found of the day on which the item by itself would be ordered.
  const reasons = on === own.order?.on ? own.reasons : own.reasons.filter(({ code }) => code !== 'too late');
  return { ...own, order, after, reasons: withReasons(reasons, said) };
}

/** Puts reasons in the place of those with the same codes; those that were not said yet come before what is compared. */
function withReasons(reasons: readonly Reason[], said: readonly Reason[]): Reason[] {
  const codes = new Set(reasons.map(({ code }) => code));
  const replaced = reasons.map((reason) => said.find(({ code }) => code === reason.code) ?? reason);
  const compared = reasons.findIndex(({ code }) => code.startsWith('why not '));
  const missing = said.filter(({ code }) => !codes.has(code));
  return replaced.toSpliced(compared < 0 ? replaced.length : compared, 0, ...missing);
}

import type { PurchaseOrderView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { majorText, minorUnits } from '../plans/figures/minor-units.js';
import type { OrderChange } from './orders.requests.js';

/** A draft as it is written: `delivery`, and of each line its packs and price by `packsOf` and `priceOf`, as typed. */
export type OrderDraft = Record<string, string>;

export const packsOf = (lineId: string) => `packs of ${lineId}`;
export const priceOf = (lineId: string) => `price of ${lineId}`;

/**
 * The draft as it stands; delivery is empty while the supplier's terms say what it costs.
 * @param language in which amounts are written
 */
export function draftOfOrder(
  { sums, lines, currency }: Pick<PurchaseOrderView, 'sums' | 'lines' | 'currency'>,
  language: string,
): OrderDraft {
  const { deliveryCostFrom, deliveryCostMinor } = sums;
  const isByHand = deliveryCostFrom === 'by hand' && deliveryCostMinor !== null;
  const draft: OrderDraft = { delivery: isByHand ? majorText(deliveryCostMinor, currency, language) : '' };
  for (const { id, packs, packPriceMinor } of lines) {
    draft[packsOf(id)] = String(packs);
    draft[priceOf(id)] = packPriceMinor === null ? '' : majorText(packPriceMinor, currency, language);
  }
  return draft;
}

/**
 * What was written otherwise, as it is handed in.
 * @param changes the fields that were written
 * @returns the change; or the fields that hold no number of packs, or no amount of the currency
 */
export function changeOfOrder(
  changes: Partial<OrderDraft>,
  { lines, currency }: Pick<PurchaseOrderView, 'lines' | 'currency'>,
): { change: Pick<OrderChange, 'change' | 'deliveryCostMinor'> } | { unreadable: string[] } {
  const unreadable: string[] = [];
  const amount = (text: string, field: string) => {
    const minor = minorUnits(text, currency);
    if (minor === undefined) unreadable.push(field);
    return minor ?? null;
  };
  const count = (text: string, field: string) => {
    if (!/^\s*[1-9]\d*\s*$/.test(text)) unreadable.push(field);
    return Number(text);
  };
  const change = lines.flatMap(({ id }) => {
    const packs = changes[packsOf(id)];
    const price = changes[priceOf(id)];
    if (packs === undefined && price === undefined) return [];
    return [
      {
        lineId: id,
        ...(packs !== undefined && { packs: count(packs, packsOf(id)) }),
        ...(price !== undefined && { packPriceMinor: amount(price, priceOf(id)) }),
      },
    ];
  });
  const { delivery } = changes;
  const deliveryCostMinor = delivery === undefined ? undefined : amount(delivery, 'delivery');
  if (unreadable.length > 0) return { unreadable };
  return {
    change: {
      ...(change.length > 0 && { change }),
      ...(deliveryCostMinor !== undefined && { deliveryCostMinor }),
    },
  };
}

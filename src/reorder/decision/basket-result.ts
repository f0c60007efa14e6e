import type { BasketFigures } from './item-decision-result.js';

/** What counts for all orders with one supplier; minor units. */
export interface BasketTerms {
  supplierId: string;
  minimumOrderMinor: number | null;
  deliveryCostMinor: number;
  freeDeliveryFromMinor: number | null;
}

/** One item that may be part of a basket. */
export interface BasketItem {
  /** The caller's own name of the line. */
  key: string;
  figures: BasketFigures;
  /** Its own day; null: it is not due within the horizon and is only added where that pays. */
  on: string | null;
  /** For an appointment, or as it stands: neither moved nor made more. */
  fixed: boolean;
}

export type BasketReason = 'due' | 'shares the delivery' | 'reaches the minimum' | 'reaches free delivery';

export interface BasketLine {
  key: string;
  offerId: string;
  productId: string;
  packs: number;
  /** Packs of the item by itself, 0 when it was not due. */
  ownPacks: number;
  ownOn: string | null;
  packPriceMinor: number;
  priceMinor: number;
  /** Part of the delivery, by price; those of all lines add up to it. */
  deliveryShareMinor: number;
  /** Why it is here, or why more packs than its own. */
  reasons: BasketReason[];
  /** Expected extra cost of being here and of being more, and what that spares. */
  extraMinor: number;
  sparedMinor: number;
}

export type MinimumChoice =
  /** As it is, if the supplier takes it. */
  | { choice: 'order anyway'; goodsMinor: number; missingMinor: number }
  /** Until further lines are due and the minimum is reached. */
  | { choice: 'wait'; until: string; extraMinor: number }
  /** Make one line more (or take it in) by so many packs, whatever that costs. */
  | { choice: 'add'; key: string; packs: number; priceMinor: number; extraMinor: number };

/** One order with one supplier on one day. */
export interface Basket {
  supplierId: string;
  on: string;
  lines: BasketLine[];
  goodsMinor: number;
  deliveryMinor: number;
  totalMinor: number;
  minimum: {
    state: 'none' | 'reached' | 'reached by adding' | 'not reached';
    minimumMinor: number | null;
    missingMinor: number;
    choices: MinimumChoice[];
  };
  freeDelivery: { fromMinor: number; reached: boolean; missingMinor: number } | null;
}

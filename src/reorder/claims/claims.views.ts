import type { ClaimStep } from './claim-steps.js';
import type { ClaimReason, ClaimState } from './vocabulary.js';

/** What a claim is about, in words. */
export class ClaimedGoodsView {
  /** Null: no product is named. */
  productId: string | null;
  makerName: string | null;
  productName: string | null;
  shade: string | null;
  /** The code of the lot. */
  lotCode: string | null;
  /** The number of the order; null: of none. */
  orderNumber: number | null;
  orderId: string | null;
  deliveryId: string | null;
  /** When the goods came. */
  deliveredAt: string | null;
}

/** What a supplier is asked to make good. Amounts are in whole minor units of the currency. */
export class ClaimView {
  id: string;
  supplierId: string;
  supplierName: string;
  orderLineId: string | null;
  deliveryLineId: string | null;
  lotId: string | null;
  goods: ClaimedGoodsView;
  reason: ClaimReason;
  pieces: number;
  amountMinor: number | null;
  currency: string | null;
  state: ClaimState;
  steps: ClaimStep[];
  settledMinor: number | null;
  hasNote: boolean;
  version: number;
  createdAt: string;
  sentAt: string | null;
  endedAt: string | null;
}

export class ShownClaimView extends ClaimView {
  /** Shown to those who may place orders; null: there is none, or it is not shown. */
  note: string | null;
}

export class ClaimPageView {
  items: ClaimView[];
  /** Give it as `after` for the next page; null on the last. */
  next: string | null;
}

/** How short a date is. */
export class ShortDateView {
  useBy: string;
  /** On arrival; negative: it was past. */
  daysLeft: number;
  /** By the offer; null: it was past, whatever the offer says. */
  promisedDays: number | null;
}

/** What the record gives reason to claim; nothing is claimed before somebody opens it. */
export class ClaimSuggestionView {
  supplierId: string;
  supplierName: string;
  orderLineId: string | null;
  deliveryLineId: string | null;
  lotId: string | null;
  goods: ClaimedGoodsView;
  reason: ClaimReason;
  pieces: number;
  /** What the pieces cost; null: not known. */
  amountMinor: number | null;
  currency: string | null;
  /** Of a date that is too short; else null. */
  shortDate: ShortDateView | null;
  /** Why, in a sentence. */
  why: string;
}

export class ClaimSuggestionsView {
  /** The latest delivery first. */
  items: ClaimSuggestionView[];
  /** Whether there are more than are shown. */
  more: boolean;
}

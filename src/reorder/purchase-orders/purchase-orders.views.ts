import type { OrderEnding, OrderMailState, OrderWay, PurchaseOrderState } from './order-states.js';
import type { OrderStep } from './order-steps.js';
import type { OrderWarningCode } from './order-warnings.js';

/** One product of an order, and what came of it. Amounts of money are in whole minor units of the order's currency. */
export class PurchaseOrderLineView {
  id: string;
  /** From 1. Numbers of lines that were taken off are not used again. */
  lineNumber: number;
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  productArchived: boolean;
  /** Null: it was written by hand. */
  offerId: string | null;
  /** The supplier's own number of it. */
  orderCode: string | null;
  packs: number;
  /** Containers in a pack. */
  packContainers: number;
  /** Pieces in each container; 1 for a bottle. */
  containerPieces: number;
  packPriceMinor: number | null;
  lineMinor: number | null;
  orderedPieces: number;
  /** Of this product; more than was ordered counts too. */
  receivedPieces: number;
  outstandingPieces: number;
}

/** What should be looked at before the order is approved. */
export class PurchaseOrderWarningView {
  code: OrderWarningCode;
  /** The line it is about; null: the whole order. */
  lineNumber: number | null;
  message: string;
}

/** What came otherwise than it was ordered. */
export class PurchaseOrderDifferenceView {
  kind: 'more than ordered' | 'another product' | 'not ordered';
  orderLineId: string | null;
  deliveryId: string;
  deliveryLineId: string;
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  pieces: number;
}

/** A delivery that brought something of the order. */
export class PurchaseOrderDeliveryView {
  deliveryId: string;
  occurredAt: string;
  reference: string | null;
}

/** With what the order, or its rest, is expected. */
export class PurchaseOrderExpectedView {
  id: string;
  /** YYYY-MM-DD. */
  expectedOn: string;
  /** Still expected although its day is over. */
  late: boolean;
  endedAs: 'received' | 'called off' | null;
  version: number;
}

/** The latest mail that somebody asked for. */
export class PurchaseOrderMailView {
  id: string;
  state: OrderMailState;
  /** Attempts whose end is known. */
  attempts: number;
  /** An attempt was cut off before its end was known, so the supplier may have it twice; the mail says so itself. */
  mayHaveArrivedTwice: boolean;
  /** Why the last attempt failed. */
  lastError: string | null;
  /** When it is tried next, or an attempt under way must be over; null: not any more. */
  nextAttemptAt: string | null;
  createdAt: string;
  settledAt: string | null;
}

export class PurchaseOrderSumsView {
  /** Of the lines whose price is known. */
  linesMinor: number;
  unpricedLines: number;
  deliveryCostMinor: number | null;
  /** Who says it: a person, the supplier's terms, or, from the approval on, what was approved. */
  deliveryCostFrom: 'by hand' | 'terms' | 'approved' | 'not known';
  /** Null while a price or the delivery cost is not known. */
  totalMinor: number | null;
  /** What the supplier takes at least; null: nothing is known. */
  minimumOrderMinor: number | null;
}

export class PurchaseOrderView {
  id: string;
  /** Counted by studio, from 1. */
  number: number;
  supplierId: string;
  supplierName: string;
  state: PurchaseOrderState;
  /** What may be done with it now. */
  steps: OrderStep[];
  /** The plan it was drafted from. */
  planId: string | null;
  /** ISO 4217 code. */
  currency: string;
  lines: PurchaseOrderLineView[];
  sums: PurchaseOrderSumsView;
  /** While it is a draft. */
  warnings: PurchaseOrderWarningView[];
  /** Why it cannot be sent by mail; null: it can. */
  mailObstacle: 'no mail server' | 'no mail address' | null;
  mail: PurchaseOrderMailView | null;
  approvedBy: string | null;
  approvedAt: string | null;
  sentAs: OrderWay | null;
  sentAt: string | null;
  expected: PurchaseOrderExpectedView | null;
  deliveries: PurchaseOrderDeliveryView[];
  differences: PurchaseOrderDifferenceView[];
  endedAt: string | null;
  endedAs: OrderEnding | null;
  version: number;
  createdAt: string;
}

/** An order as it stands in a list. */
export class PurchaseOrderSummaryView {
  id: string;
  number: number;
  supplierId: string;
  supplierName: string;
  state: PurchaseOrderState;
  planId: string | null;
  currency: string;
  lines: number;
  productIds: string[];
  /** Of the lines whose price is known, without delivery. */
  linesMinor: number;
  unpricedLines: number;
  sentAt: string | null;
  /** With what the order, or its rest, was or is expected; null: nothing was. */
  expectedDeliveryId: string | null;
  /** YYYY-MM-DD; null: nothing is expected. */
  expectedOn: string | null;
  late: boolean;
  /** Of the latest mail; null: none was asked for. */
  mailState: OrderMailState | null;
  endedAs: OrderEnding | null;
  version: number;
  createdAt: string;
}

export class PurchaseOrderPageView {
  items: PurchaseOrderSummaryView[];
  /** Give it as `after` for the next page; null on the last. */
  next: string | null;
}

export class DraftedOrdersView {
  /** One for each supplier, by the name of the supplier. */
  orders: PurchaseOrderView[];
}

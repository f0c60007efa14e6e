/** Goods that were ordered and are expected on a day. */
export class ExpectedDeliveryView {
  id: string;
  supplierId: string;
  supplierName: string;
  /** The supplier's or the studio's number of the order. */
  reference: string | null;
  /** YYYY-MM-DD. */
  orderedOn: string | null;
  /** YYYY-MM-DD. */
  expectedOn: string;
  /** Still expected although its day is over. */
  late: boolean;
  endedAt: string | null;
  /** Null: still expected. */
  endedAs: 'received' | 'called off' | null;
  /** The delivery it came with, where that is known. */
  deliveryId: string | null;
  version: number;
  createdAt: string;
}

export class ExpectedDeliveryPageView {
  items: ExpectedDeliveryView[];
  /** Give it as `after` for the next page; null on the last. */
  next: string | null;
}

export class DeliveryLineView {
  id: string;
  /** From 1. */
  lineNumber: number;
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  lotId: string;
  code: string | null;
  useBy: string | null;
  quantityPieces: number;
  unitCostMinor: number | null;
  currency: string | null;
  orderLineId: string | null;
}

export class DeliveryView {
  id: string;
  origin: 'purchase' | 'gift or sample' | 'opening stock';
  supplierId: string | null;
  supplierName: string | null;
  orderedOn: string | null;
  reference: string | null;
  occurredAt: string;
  recordedAt: string;
  personId: string | null;
  /** Lots as they stand now. */
  lines: DeliveryLineView[];
}

export class DeliveryPageView {
  items: DeliveryView[];
  /** Give it as `after` for the next page; null on the last. */
  next: string | null;
}

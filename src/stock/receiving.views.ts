export class PrintedCodeView {
  kind: 'lot' | 'batch' | 'other';
  code: string;
}

export class ReceivedLotView {
  id: string;
  productId: string;
  /** The code by which the lot is known; null when none is printed or it cannot be read. */
  code: string | null;
  codeState: 'printed' | 'none printed' | 'unreadable';
  codes: PrintedCodeView[];
  /** Last day of use, YYYY-MM-DD; null when none is printed. */
  useBy: string | null;
  useByPrecision: 'day' | 'month' | 'year' | 'none printed';
  manufacturedOn: string | null;
  version: number;
  /** Whether this delivery brought its first goods. */
  isNew: boolean;
}

export class ReceivedContainerView {
  id: string;
  /** Lotward's own code, 12 characters, to be printed on its label. */
  labelCode: string;
  form: 'bottle' | 'box';
  state: 'sealed' | 'opened';
  pieces: number;
  /** Labelled volume, or what is left in one that came opened; 0 for what is counted in pieces only. */
  microlitres: number;
  placeId: string;
  ownerId: string | null;
}

export class ReceivedHoldView {
  id: string;
  kind: 'quarantine' | 'recall' | 'compliance';
  reason: string;
  /** Exactly one of lot and container is named. */
  lotId: string | null;
  containerId: string | null;
  /** False for one that was open on the lot before. */
  placedNow: boolean;
}

export class ReceivedLineView {
  /** From 1. */
  lineNumber: number;
  quantityPieces: number;
  unitCostMinor: number | null;
  currency: string | null;
  orderLineId: string | null;
  lot: ReceivedLotView;
  containers: ReceivedContainerView[];
  /** What has to be decided before these goods may be used. */
  holds: ReceivedHoldView[];
  warnings: string[];
}

export class ReceiptView {
  id: string;
  origin: 'purchase' | 'gift or sample' | 'opening stock';
  supplierId: string | null;
  orderedOn: string | null;
  reference: string | null;
  occurredAt: string;
  recordedAt: string;
  lines: ReceivedLineView[];
}

import { ContainerView } from '../container-list.views.js';

/** How much of something; a bottle is one piece. */
export class QuantityView {
  pieces: number;
  /** An estimate. */
  microlitres: number;
}

/** Where what was sent is: sent = in transit + arrived + lost + back. */
export class LineBalanceView {
  sent: QuantityView;
  inTransit: QuantityView;
  arrived: QuantityView;
  lost: QuantityView;
  /** Called back by the sender. */
  back: QuantityView;
}

/** The container goods came into, by its ids in the studio that says so. */
export class TransferGoodsView {
  lotId: string;
  containerId: string;
  pieces: number;
  microlitres: number;
  /** Pieces beyond what was sent. */
  surplusPieces: number;
  /** What they were put aside for. */
  fault: 'broken seal' | 'damaged package' | null;
}

/** What became of a line, as one of the two studios recorded it. */
export class TransferOutcomeView {
  kind: 'arrived' | 'turned up' | 'withdrawn';
  occurredAt: string;
  recordedAt: string;
  reason: string | null;
  /** Sent and not arrived; negative for what turned up. */
  lost: QuantityView;
  goods: TransferGoodsView[];
}

/** A hold that stands in the sending studio on what was sent. */
export class ToldHoldView {
  kind: 'quarantine' | 'recall' | 'compliance';
  reason: string;
  /** On the lot there, or only on the container it was in. */
  on: 'container' | 'lot';
}

export class TransferLineView {
  id: string;
  lineNumber: number;
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
  form: 'bottle' | 'box';
  /** As it was sent. */
  state: 'sealed' | 'opened' | 'practice only';
  /** In the sending studio. */
  lotId: string;
  containerId: string;
  /** Lotward's label of the sending studio, which may still stick on it. */
  labelCode: string;
  code: string | null;
  codeState: 'printed' | 'none printed' | 'unreadable';
  useBy: string | null;
  useByPrecision: 'day' | 'month' | 'year' | 'none printed';
  manufacturedOn: string | null;
  openedAt: string | null;
  /** The end of its opened life in the sending studio: a day, or an instant; it lasts no longer anywhere. */
  usableThrough: string | null;
  /** What stands in the sending studio by now; it arrives on hold. */
  holds: ToldHoldView[];
  /** What became of it so far. */
  lineState: 'in transit' | 'arrived' | 'lost' | 'withdrawn';
  balance: LineBalanceView;
  outcomes: TransferOutcomeView[];
}

export class TransferSummaryView {
  id: string;
  direction: 'out' | 'in';
  senderId: string;
  receiverId: string;
  reason: string;
  occurredAt: string;
  recordedAt: string;
  lineCount: number;
  /** Lines whose goods are on neither shelf; the transfer is open while there are any. */
  linesInTransit: number;
}

export class TransferPageView {
  /** Those with anything in transit first, then the latest first. */
  items: TransferSummaryView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
}

/** A transfer as both studios see it: ids of the other studio, and nothing of its clients. */
export class TransferView extends TransferSummaryView {
  lines: TransferLineView[];
}

/** What was made of an arrival. */
export class ArrivalView {
  transfer: TransferView;
  /** New here, each with a label of its own. */
  containers: ContainerView[];
  /** What the person should know; what arrived was recorded all the same. */
  warnings: string[];
}

/** A studio of the chain that goods can be sent to. */
export class ReceivingStudioView {
  id: string;
  name: string;
}

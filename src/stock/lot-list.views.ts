import { ContainerView } from './container-list.views.js';
import { ReleaseRequestView } from './holds.views.js';

/** What is here of a lot, in pieces; a bottle is one. Each piece counts once among usable, held, expired and practice. */
export class LotQuantitiesView {
  usablePieces: number;
  /** Those of the usable that have to be used soon, by the days the studio set. */
  endingSoonPieces: number;
  onHandPieces: number;
  /** By the book, an estimate. */
  onHandMicrolitres: number;
  heldPieces: number;
  /** Past its use-by or open too long, and not held. */
  expiredPieces: number;
  practicePieces: number;
  openedContainers: number;
}

export class LotSummaryView {
  id: string;
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
  kind: 'pigment' | 'cartridge' | 'consumable';
  /** As printed; null when none is printed or it cannot be read. */
  code: string | null;
  codeState: 'printed' | 'none printed' | 'unreadable';
  useBy: string | null;
  useByPrecision: 'day' | 'month' | 'year' | 'none printed';
  manufacturedOn: string | null;
  origin: 'delivery' | 'blend' | 'opening stock' | 'late record' | 'transfer';
  createdAt: string;
  version: number;
  quantities: LotQuantitiesView;
}

export class LotPageView {
  /** The latest first. */
  items: LotSummaryView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
}

export class LotCodeView {
  id: string;
  kind: 'lot' | 'batch' | 'other';
  code: string;
  recordedAt: string;
  /** When it was corrected; it still finds the lot. */
  supersededAt: string | null;
}

export class LotHoldView {
  id: string;
  kind: 'quarantine' | 'recall' | 'compliance';
  reason: string;
  note: string | null;
  /** The one container that is held; null: the whole lot. */
  containerId: string | null;
  occurredAt: string;
  releasedAt: string | null;
  releaseReason: string | null;
  /** The latest request that it be released; null: nobody asked. */
  releaseRequest: ReleaseRequestView | null;
}

/** The sum of one kind of movement, reversals taken off. */
export class MassBalanceView {
  kind:
    | 'received'
    | 'produced'
    | 'transferred in'
    | 'adjusted'
    | 'used'
    | 'blended'
    | 'wasted'
    | 'returned'
    | 'transferred out';
  pieces: number;
  /** An estimate. */
  microlitres: number;
}

export class MovementView {
  id: string;
  containerId: string;
  kind: string;
  /** Signed. */
  pieces: number;
  /** Signed estimate. */
  microlitres: number;
  /** The movement that this one reverses. */
  reversesId: string | null;
  /** The movement that reverses this one. */
  reversedById: string | null;
  sessionId: string | null;
  reason: string | null;
  occurredAt: string;
  recordedAt: string;
  personId: string | null;
}

export class LotBlendView {
  lotId: string;
  microlitres: number;
}

/** A delivery in which some of a lot arrived. */
export class LotDeliveryView {
  deliveryId: string;
  origin: 'purchase' | 'gift or sample' | 'opening stock';
  supplierName: string | null;
  reference: string | null;
  occurredAt: string;
  quantityPieces: number;
}

/** Goods of a lot that came from another studio of the chain, or went there: ids only. */
export class LotTransferView {
  transferId: string;
  lineId: string;
  /** The other studio. */
  studioId: string;
  /** The lot in the other studio; null while nothing of it has arrived there. */
  lotId: string | null;
  fromContainerId: string;
  /** Null while nothing of it has arrived. */
  intoContainerId: string | null;
  pieces: number;
  /** An estimate. */
  microlitres: number;
  /** When it arrived here, or left here. */
  occurredAt: string;
}

export class LotSentView extends LotTransferView {
  /** What was lost on the way altogether has arrived with no pieces. */
  state: 'in transit' | 'arrived' | 'turned up' | 'withdrawn';
}

export class LotView extends LotSummaryView {
  codes: LotCodeView[];
  /** By their ids, at most a thousand. */
  containers: ContainerView[];
  /** Hand it in as `containersAfter` for further containers; null: there are none. */
  nextContainer: string | null;
  /** Of the lot and of its containers, released ones too. */
  holds: LotHoldView[];
  /** Adds up to what is on hand. */
  massBalance: MassBalanceView[];
  /** In which it arrived, the latest first; at most two hundred. */
  deliveries: LotDeliveryView[];
  /** Lots blended into this one. */
  blendedFrom: LotBlendView[];
  /** Blends this lot went into. */
  blendedInto: LotBlendView[];
  /** Arrived from other studios of the chain, the latest first. */
  cameFrom: LotTransferView[];
  /** Sent to other studios of the chain, the latest first. */
  wentTo: LotSentView[];
  /** The latest first. */
  movements: MovementView[];
  /** Hand it in as `after` for earlier movements; null: there are none. */
  nextMovement: string | null;
}

import { MovementView } from '../../stock/lot-list.views.js';

/** One term of the account of a lot, reversals taken off. */
export class BalanceFigureView {
  /** `counted more` and `counted fewer`: adjustments, those for more use than the book had among them. */
  kind:
    | 'received'
    | 'produced'
    | 'transferred in'
    | 'counted more'
    | 'used'
    | 'emptied'
    | 'blended'
    | 'wasted'
    | 'returned'
    | 'transferred out'
    | 'counted fewer'
    | 'moved between boxes';
  /** Exact. Positive for what the word says; 0 for what was only moved from box to box. */
  pieces: number;
  /** An estimate. */
  microlitres: number;
  /** How many movements are behind it. */
  movements: number;
}

/** A part of the book that is not explained. */
export class UnexplainedView {
  /** `not looked for` is still to be found; `lost on the way`: sent to another studio, where it did not arrive. */
  reason:
    | 'counted more'
    | 'counted fewer'
    | 'lost on the way'
    | 'not found'
    | 'not looked for'
    | 'on ended containers';
  pieces: number;
  /** An estimate. */
  microlitres: number;
}

/** Pieces exactly, volumes as estimates. */
export class BalanceQuantityView {
  pieces: number;
  /** An estimate. */
  microlitres: number;
}

/** What went to another studio or came from there. The rest of its way is that studio's part of the recall. */
export class OtherEndView {
  direction: 'to' | 'from';
  studioId: string;
  studioName: string;
  /** The lot there; null while it is on its way. */
  lotId: string | null;
  pieces: number;
  /** An estimate. */
  microlitres: number;
  state: 'in transit' | 'arrived' | 'turned up' | 'withdrawn';
}

/** The account of one lot: what came in is what left, what is here and what is not accounted for. */
export class LotBalanceView {
  lotId: string;
  productId: string;
  productName: string;
  shade: string | null;
  makerName: string;
  lotCode: string | null;
  useBy: string | null;
  /** Of the lot of the recall that is in it. */
  standing: 'affected' | 'undecided';
  /** Whether it is a house blend in which a lot of the recall is. */
  isBlend: boolean;
  figures: BalanceFigureView[];
  /** By the ledger: the sum of all movements. */
  onHand: BalanceQuantityView;
  /** Of what is on hand: found by somebody who looked for it. */
  found: BalanceQuantityView;
  /** All that came in, what was counted beyond it included. */
  cameIn: BalanceQuantityView;
  /** What neither left nor was found. */
  notAccounted: BalanceQuantityView;
  unexplained: UnexplainedView[];
  /** How much of the pieces is explained, whole percent rounded down; null: the book never had a piece. */
  balancedPercent: number | null;
  /** What of it reached clients through house blends, microlitres, a derived share that is booked nowhere else. */
  reachedThroughBlends: { shareMicrolitres: number };
  /** At most 200. */
  otherEnds: OtherEndView[];
}

/** The sum over lots. */
export class BalanceTotalsView {
  lots: number;
  onHand: BalanceQuantityView;
  found: BalanceQuantityView;
  cameIn: BalanceQuantityView;
  notAccounted: BalanceQuantityView;
  unexplained: UnexplainedView[];
  balancedPercent: number | null;
}

/** The mass balance of a recall: its lots, and separately the house blends in which they are. */
export class RecallBalanceView {
  /** The affected and the undecided lots first, house blends after them. */
  items: LotBalanceView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
  /** Of all lots of the recall, whatever the page shows. */
  totals: BalanceTotalsView;
  /** Of all house blends in which they are. */
  blendTotals: BalanceTotalsView;
}

/** The movements behind a figure, the latest first. */
export class BalanceMovementPageView {
  items: MovementView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
}

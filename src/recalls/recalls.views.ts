export class DaySpanView {
  from: string | null;
  through: string | null;
}

/** Which lots: of `code` the code, of a `code range` both ends; of the others their span. */
export class LotTermView {
  kind: 'all lots' | 'code' | 'code range' | 'use-by' | 'manufactured';
  code?: string;
  from?: string;
  through?: string;
  useBy?: DaySpanView | null;
  manufactured?: DaySpanView;
}

export class ScopeItemView {
  makerName: string | null;
  productName: string | null;
  shade: string | null;
  gtins: string[];
  productIds: string[];
  lots: LotTermView[];
  openEnded: boolean;
}

export class LotScopeView {
  items: ScopeItemView[];
}

/** What the sentence of a reason is made of. Days are `YYYY-MM-DD`. */
export class MatchFactsView {
  /** As the notice writes it. */
  named?: string | null;
  /** As it stands on record. */
  recorded?: string | null;
  /** Ends of the range or span that the notice names; null: open at that end. */
  from?: string | null;
  through?: string | null;
}

/** Why a lot is met, or only possibly. */
export class MatchReasonView {
  code: string;
  /** An English sentence. */
  message: string;
  facts: MatchFactsView;
}

/** A lot that a scope meets, with what is here of it. */
export class MatchedLotView {
  lotId: string;
  grade: 'certain' | 'possible';
  itemIndex: number | null;
  reasons: MatchReasonView[];
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  code: string | null;
  useBy: string | null;
  onHandPieces: number;
  /** By the book, an estimate. */
  onHandMicrolitres: number;
  /** Bottles and boxes that are here. */
  containers: number;
  /** Clients it touched, directly or through a mix; through house blends is told by the recall itself. */
  clients: number;
}

/** What a scope meets here, before anything is done. */
export class MatchedLotsView {
  certainLots: number;
  possibleLots: number;
  /** Certain ones first, at most a thousand. */
  items: MatchedLotView[];
}

export class TextSpanView {
  start: number;
  end: number;
}

export class PartTargetView {
  item: number;
  lot: number | null;
}

/** A stretch of a notice and what it was read as. */
export class ReadPartView {
  kind:
    | 'maker'
    | 'product'
    | 'shade'
    | 'gtin'
    | 'code'
    | 'code range'
    | 'use-by'
    | 'manufactured'
    | 'all lots'
    | 'open-ended'
    | 'reference'
    | 'issued on'
    | 'classification'
    | 'risk'
    | 'remedy';
  /** In the text as it was given, UTF-16. */
  span: TextSpanView;
  value: string;
  targets: PartTargetView[];
}

export class RemarkFactsView {
  /** As it is written, cut to 80 characters. */
  seen?: string;
  readAs?: string;
  /** What else it could mean. */
  otherReadings?: string[];
  count?: number;
  allowed?: number;
}

/** What a person must look at. */
export class NoticeRemarkView {
  code: string;
  span: TextSpanView | null;
  facts: RemarkFactsView;
  message: string;
}

/** A proposal: nothing counts before a person has looked at it. */
export class NoticeReadingView {
  scope: LotScopeView;
  parts: ReadPartView[];
  remarks: NoticeRemarkView[];
  reference: string | null;
  issuedOn: string | null;
  classification: string | null;
  risk: string | null;
  remedy: string | null;
  matches: MatchedLotsView;
}

export class OpenedRecallView {
  id: string;
  certainLots: number;
  possibleLots: number;
}

export class AmendedRecallView extends OpenedRecallView {
  scopeNumber: number;
}

export class DecidedLotView {
  recallId: string;
  lotId: string;
  decision: 'affected' | 'not affected';
}

export class WithdrawnRecallView {
  id: string;
  endedAt: string;
}

export class RecallSummaryView {
  id: string;
  kind: 'recall' | 'drill';
  title: string;
  state: 'open' | 'closed' | 'withdrawn';
  /** Every studio of the chain has its part. */
  chainWide: boolean;
  openedInStudioId: string;
  openedAt: string;
  /** Null: in another studio of the chain. */
  openedBy: string | null;
  endedAt: string | null;
  scopeNumber: number;
  affectedLots: number;
  undecidedLots: number;
  notAffectedLots: number;
}

export class RecallPageView {
  /** The latest first. */
  items: RecallSummaryView[];
  next: string | null;
}

/** What a recall was about, as it was said at one time. */
export class RecallScopeView {
  number: number;
  noticeId: string | null;
  scope: LotScopeView;
  issuer: string | null;
  reference: string | null;
  issuedOn: string | null;
  classification: string | null;
  risk: string | null;
  remedy: string | null;
  /** Why it was amended; null: it is the first. */
  reason: string | null;
  occurredAt: string;
  personId: string | null;
}

export class RecallView extends RecallSummaryView {
  version: number;
  /** The latest first, at most fifty. */
  scopes: RecallScopeView[];
  /** How many lots this recall holds now, and lots that arrived and were caught. */
  heldLots: number;
  caughtLots: number;
  /** Whether what arrives is held too. */
  standingHold: boolean;
  /** Sessions in setup on whose trays a lot of the recall lies, directly or in a house blend. */
  traysReached: number;
  /** Why it was withdrawn. */
  withdrawalReason: string | null;
}

export class LotDecisionView {
  decision: 'affected' | 'not affected';
  reason: string;
  occurredAt: string;
  personId: string | null;
}

export class RecallLotView {
  lotId: string;
  grade: 'certain' | 'possible';
  itemIndex: number | null;
  reasons: MatchReasonView[];
  standing: 'affected' | 'not affected' | 'undecided';
  /** The latest; null: none was asked for, or none made yet. */
  decision: LotDecisionView | null;
  /** Whether this recall holds it now. */
  held: boolean;
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  code: string | null;
  useBy: string | null;
  onHandPieces: number;
  /** By the book, an estimate. */
  onHandMicrolitres: number;
}

export class RecallLotPageView {
  /** What waits for a decision first. */
  items: RecallLotView[];
  next: string | null;
}

export class NoticeDismissalView {
  reason: string;
  occurredAt: string;
  personId: string | null;
}

export class RecallNoticeView {
  id: string;
  source: 'pasted' | 'entered' | 'csv' | 'enforcement json' | 'safety gate xml' | 'fetched';
  reference: string | null;
  /** As it came. */
  text: string;
  occurredAt: string;
  personId: string | null;
  /** Set when somebody found that nothing is to be done. */
  dismissal: NoticeDismissalView | null;
}

/** A published notice that met something here. */
export class WaitingNoticeView {
  id: string;
  reference: string | null;
  /** How the text begins. */
  beginning: string;
  occurredAt: string;
}

export class WaitingNoticePageView {
  /** The latest first. */
  items: WaitingNoticeView[];
  next: string | null;
}

export class DismissedNoticeView {
  id: string;
}

import type { BodyPlace, KnownBy, VisitKind } from '../../sessions/vocabulary.js';
import type { ContactChannel, ContactOutcome, RecallKind, RecallState } from '../vocabulary.js';
import type { ContactState } from './contact-state.js';
import type { Certainty, ExposureReason } from './exposure-certainty.js';

/** Exposures of one kind of visit. */
export class ExposedVisitKindView {
  visitKind: VisitKind;
  sessions: number;
  clients: number;
}

/** All exposures of a recall, whatever a page shows. Uses recorded by mistake count nowhere but in `reversedUses`. */
export class ExposureTotalsView {
  clients: number;
  /** Clients with at least one certain exposure; all others are possible only. */
  certainClients: number;
  possibleClients: number;
  /** Clients who were erased: they stand under their reference and cannot be told. */
  erasedClients: number;
  sessions: number;
  certainSessions: number;
  possibleSessions: number;
  uses: number;
  certainUses: number;
  possibleUses: number;
  /** Of the possible uses: recorded as a lot that is not recalled, while a recalled one of the product was open that day. */
  openLotUses: number;
  /** Nobody knows how much of it was used. */
  unknownAmountUses: number;
  reversedUses: number;
  byVisitKind: ExposedVisitKindView[];
}

/** A lot of the recall that was in what touched the client, or may have been. */
export class ConcernedLotView {
  lotId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  lotCode: string | null;
  useBy: string | null;
  /** Undecided: nobody has decided yet whether it is affected. */
  standing: 'affected' | 'undecided';
  /** As itself, within a house blend, or open on that day while the use was recorded as another lot. */
  as: 'itself' | 'house blend' | 'another open lot that day';
  /** What of the use was this lot's: derived, an estimate. Null: pieces, an amount not known, or another open lot. */
  shareMicrolitres: number | null;
}

/** One use by which a lot of the recall touched a client, or may have. */
export class ExposedUseView {
  id: string;
  occurredAt: string;
  recordedAt: string;
  certainty: Certainty;
  /** Why it is only possible; empty: certain. */
  reasons: ExposureReason[];
  /** The lot it was recorded as, with its label as it was known then. */
  lotId: string;
  containerId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  lotCode: string | null;
  useBy: string | null;
  knownBy: KnownBy;
  pieces: number;
  drops: number | null;
  /** An estimate. */
  microlitres: number;
  amountKnown: boolean;
  mixId: string | null;
  /** By what it reached the client; empty: directly. */
  through: ('mix' | 'house blend')[];
  /** The reasons for which it had been refused, when it was used all the same. */
  againstRefusal: string[] | null;
  /** The lots of the recall concerned. */
  lots: ConcernedLotView[];
}

/** One session in which a lot of the recall touched the client, or may have. */
export class ExposedSessionView {
  sessionId: string;
  clientId: string;
  clientReference: string;
  /** When the client was erased; they cannot be told then. */
  clientErasedAt: string | null;
  /** The studio's local day of the first such use, YYYY-MM-DD. */
  day: string;
  occurredAt: string;
  visitKind: VisitKind;
  procedureId: string;
  procedureName: string;
  bodyPlace: BodyPlace;
  artistId: string;
  artistName: string | null;
  /** How the session was recorded: as it happened, later, or from paper. */
  recordedFrom: 'tray' | 'late' | 'paper';
  /** Of the most certain use. */
  certainty: Certainty;
  reasons: ExposureReason[];
  uses: ExposedUseView[];
}

/** Exposed sessions in the order in which they happened, a page at a time. */
export class ExposurePageView {
  totals: ExposureTotalsView;
  items: ExposedSessionView[];
  /** Session id; give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

/** The latest attempt to tell a client. */
export class LatestContactView {
  id: string;
  channel: ContactChannel;
  outcome: ContactOutcome;
  occurredAt: string;
}

/** One exposed client. Names are shown by the clients' own address only. */
export class ExposedClientView {
  clientId: string;
  clientReference: string;
  /** When the client was erased; they cannot be told then. */
  erasedAt: string | null;
  certainty: Certainty;
  sessions: number;
  certainSessions: number;
  uses: number;
  /** The studio's local days of the first and last exposure, YYYY-MM-DD. */
  firstDay: string;
  lastDay: string;
  contactState: ContactState;
  /** Null: nobody has tried yet. */
  latestContact: LatestContactView | null;
}

/** Exposed clients: the certain ones first, then the latest exposed first. */
export class ExposedClientPageView {
  totals: ExposureTotalsView;
  items: ExposedClientView[];
  /** Client id; give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

/** A recall by which a client was exposed. */
export class ClientRecallView {
  recallId: string;
  title: string;
  kind: RecallKind;
  state: RecallState;
  openedAt: string;
  certainty: Certainty;
  sessions: number;
  certainSessions: number;
  firstDay: string;
  lastDay: string;
  contactState: ContactState;
  latestContact: LatestContactView | null;
}

export class ClientRecallsView {
  clientId: string;
  /** The latest first. */
  items: ClientRecallView[];
  /** More recalls than are looked through name what this client was treated with; the oldest are left out. */
  moreRecalls: boolean;
}

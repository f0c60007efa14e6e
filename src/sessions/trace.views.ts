import type { BodyPlace, KnownBy, VisitKind } from './vocabulary.js';

/** How many there are in all, whatever the page shows. */
export class TraceTotalsView {
  /** Every use, also those recorded by mistake. */
  uses: number;
  /** Uses recorded by mistake and reversed. */
  reversedUses: number;
  /** Sessions with a use that stands. */
  sessions: number;
  /** Clients with a use that stands. */
  clients: number;
}

/** A lot that was in what touched the client. */
export class TracedLotView {
  lotId: string;
  /** False: it was in it through a house blend. */
  direct: boolean;
  makerName: string;
  productName: string;
  shade: string | null;
  lotCode: string | null;
  useBy: string | null;
  /** What of the use is this lot's: derived, an estimate, never booked. Null: pieces, or an amount not known. */
  shareMicrolitres: number | null;
}

/** One use: what touched a client. Names of clients are shown by the clients' own address only. */
export class TraceUseView {
  id: string;
  sessionId: string;
  clientId: string;
  clientReference: string;
  artistId: string;
  procedureId: string;
  procedureName: string;
  visitKind: VisitKind;
  bodyPlace: BodyPlace;
  /** How the session was recorded: as it happened, later, or from paper. */
  recordedFrom: 'tray' | 'late' | 'paper';
  occurredAt: string;
  recordedAt: string;
  /** The lot that was taken in hand, with its label as it was known then. */
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
  mixId: string | null;
  /** By what the lots reached the client; empty: directly. */
  through: ('mix' | 'house blend')[];
  /** The reasons for which it had been refused, when it was used all the same. */
  againstRefusal: string[] | null;
  /** Set when it was recorded by mistake. */
  reversedAt: string | null;
  /** From a lot: the lots asked for. From a client or a session: every lot that was in it. */
  lots: TracedLotView[];
}

/** Another lot of the same product and code: another batch, or the same one under a date that was misread. */
export class SisterLotView {
  lotId: string;
  /** Last usable day; null: none was printed. */
  useBy: string | null;
}

/** Uses in the order in which they happened, all of them, a page at a time. */
export class TraceView {
  totals: TraceTotalsView;
  items: TraceUseView[];
  /** Give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

/** The trace of one lot. */
export class LotTraceView extends TraceView {
  /** Whoever asks for a code means these too. */
  sisterLots: SisterLotView[];
}

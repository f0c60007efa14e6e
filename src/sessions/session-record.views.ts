import { MixView } from './mixes.views.js';
import { TracedLotView } from './trace.views.js';
import type { BodyPlace, KnownBy, SessionState, VisitKind } from './vocabulary.js';

export class UsedCodeView {
  kind: string;
  code: string;
}

export class UseReversalView {
  /** Null after erasure and for whoever is not shown clients. */
  reason: string | null;
  recordedAt: string;
  personId: string | null;
}

/** What touched the client, with the label as it was known then. */
export class UseView {
  id: string;
  lotId: string;
  containerId: string;
  productId: string;
  kind: 'pigment' | 'cartridge' | 'consumable';
  /** The cup it was dropped into; null: used by itself. */
  mixId: string | null;
  /** The brand. */
  makerName: string;
  productName: string;
  /** The colour. */
  shade: string | null;
  /** Null: none was printed, or it could not be read. */
  lotCode: string | null;
  /** Every code printed for the lot. */
  codes: UsedCodeView[];
  /** Last usable day; null: none was printed. */
  useBy: string | null;
  knownBy: KnownBy;
  pieces: number;
  drops: number | null;
  /** An estimate. */
  microlitres: number;
  /** The reasons for which it had been refused, when it was used all the same. */
  againstRefusal: string[] | null;
  /** Why, in the artist's words. Null also after erasure and for whoever is not shown clients. */
  reason: string | null;
  appliedAt: string | null;
  removedAt: string | null;
  appliedBy: string | null;
  occurredAt: string;
  recordedAt: string;
  /** Who recorded it. */
  personId: string | null;
  /** Set when it was recorded by mistake. */
  reversal: UseReversalView | null;
}

export class SessionTrayLineView {
  id: string;
  productId: string;
  productName: string;
  lotId: string;
  lotCode: string | null;
  containerId: string;
  pieces: number;
  serial: string | null;
  knownBy: KnownBy;
  admittedAt: string;
  state: 'on tray' | 'taken off' | 'settled';
  settledAs: 'used' | 'opened unused' | 'back unopened' | null;
}

export class NamedPersonView {
  id: string;
  name: string | null;
}

export class SessionClientView {
  id: string;
  reference: string;
  /** Null after erasure and for whoever is not shown clients. */
  name: string | null;
}

export class SessionProcedureView {
  id: string;
  name: string;
}

export class HealedResultView {
  /** How much of the colour is still there, 0 to 100. */
  retainedColourPercent: number;
  note: string | null;
  /** When it was looked at. */
  occurredAt: string;
  /** The visit at which it was seen; null: not at a visit. */
  seenAtSessionId: string | null;
}

/** Everything recorded of one session. */
export class SessionView {
  id: string;
  state: SessionState;
  version: number;
  client: SessionClientView;
  artist: NamedPersonView;
  procedure: SessionProcedureView;
  visitKind: VisitKind;
  bodyPlace: BodyPlace;
  bodyPlaceDetail: string | null;
  bookedAt: string | null;
  plannedStart: string | null;
  plannedAt: string;
  inSetupAt: string | null;
  completedAt: string | null;
  cancelledAt: string | null;
  notAttendedAt: string | null;
  followsSessionId: string | null;
  recordedFrom: 'tray' | 'late' | 'paper';
  signedBy: NamedPersonView | null;
  signedAt: string | null;
  /** Null: not asked yet, or the client was erased, or the reader is not shown clients; so with every text here. */
  complications: string | null;
  healedResult: HealedResultView | null;
  tray: SessionTrayLineView[];
  mixes: MixView[];
  uses: UseView[];
}

export class SignatureView {
  personId: string;
  name: string | null;
  signedAt: string | null;
}

/** The lots that a house blend was made of, at any depth. */
export class BlendedPigmentView {
  useId: string;
  lots: TracedLotView[];
}

/**
 * The record of a client's visit as a written form asks for it: date and time, place on the body, expiration date and
 * batch or lot of every sterilised instrument; expiration date, brand, colour and batch or lot of every pigment;
 * complications; the artist's name and signature (NEHA Body Art Model Code, March 2024, §7 [P]). Uses recorded by
 * mistake stand apart.
 */
export class ClientRecordView {
  sessionId: string;
  client: SessionClientView;
  /** When the visit took place: instant in UTC. */
  occurredAt: string | null;
  /** The studio's local day and time, YYYY-MM-DD HH:MM. */
  localDateAndTime: string | null;
  timeZone: string;
  visitKind: VisitKind;
  procedureName: string;
  bodyPlace: BodyPlace;
  bodyPlaceDetail: string | null;
  /** Needle cartridges and other single-use needles. */
  instruments: UseView[];
  pigments: UseView[];
  /** What those pigments were made of that are house blends. */
  blendedPigments: BlendedPigmentView[];
  /** Everything else that touched the client, such as an anaesthetic. */
  others: UseView[];
  /** Recorded by mistake and reversed. */
  reversed: UseView[];
  complications: string | null;
  artist: NamedPersonView;
  /** Null: not signed yet. */
  signature: SignatureView | null;
  recordedFrom: 'tray' | 'late' | 'paper';
}

import type { BodyPlace, SessionState, VisitKind } from './vocabulary.js';

/** The answer to a write, which is kept and so holds nothing personal. */
export class WrittenSessionView {
  id: string;
  state: SessionState;
  version: number;
  clientId: string;
  /** The client's short code. */
  clientReference: string;
  followsSessionId: string | null;
  /** Why it follows that session: it was named, or, for a touch-up, it is the client's latest first session. */
  followsBecause: 'named' | 'latest completed first session of this procedure' | null;
}

export class SessionListItemView {
  id: string;
  state: SessionState;
  version: number;
  clientId: string;
  clientReference: string;
  /** Null after erasure and for whoever is not shown clients. */
  clientName: string | null;
  artistId: string;
  artistName: string | null;
  procedureId: string;
  procedureName: string;
  visitKind: VisitKind;
  bodyPlace: BodyPlace;
  bookedAt: string | null;
  /** When it starts or, for a walk-in or a late record, started. */
  plannedStart: string | null;
  inSetupAt: string | null;
  completedAt: string | null;
  followsSessionId: string | null;
  recordedFrom: 'tray' | 'late' | 'paper';
}

export class SessionPageView {
  items: SessionListItemView[];
  /** Give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

/** A legal claim for which the client's record is needed. */
export class LegalClaimView {
  id: string;
  /** Null after erasure and for whoever is not shown clients, as is the reason of its end. */
  reason: string | null;
  recordedAt: string;
  personId: string | null;
  /** Null: it still stands, and the client is not erased. */
  endedAt: string | null;
  endedBecause: string | null;
  endedBy: string | null;
}

/** The answer to a write, which is kept and so holds nothing personal. */
export class WrittenLegalClaimView {
  id: string;
  clientId: string;
  endedAt: string | null;
}

export class ClientView {
  id: string;
  /** A short code that says nothing of the person. */
  reference: string;
  /** Null after erasure and for whoever is not shown clients, as are contact and note. */
  name: string | null;
  contact: string | null;
  note: string | null;
  erasedAt: string | null;
  createdAt: string;
  version: number;
}

export class ClientPageView {
  items: ClientView[];
  /** Give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

/** The answer to a write, which is kept and so holds nothing personal. */
export class WrittenClientView {
  id: string;
  reference: string;
  version: number;
}

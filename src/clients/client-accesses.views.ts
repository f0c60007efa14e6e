import type { AccessKind } from './client-access.entity.js';

/** That a person was shown something of the client. Looking at the same again within a minute is the same look. */
export class ClientAccessView {
  id: string;
  personId: string | null;
  personName: string | null;
  /** What was shown: their own page, a list or search that named them, one of their sessions, an export. */
  what: AccessKind;
  accessedAt: string;
}

export class ClientAccessPageView {
  items: ClientAccessView[];
  /** Give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

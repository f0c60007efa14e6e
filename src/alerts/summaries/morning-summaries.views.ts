export class SummaryLineView {
  alertId: string;
  kind: string;
  subjectKind: string;
  subjectId: string;
  severity: 'notice' | 'warning' | 'urgent';
  /** As they were when it was written: names of products, lot codes, places, dates, quantities. */
  facts: Record<string, unknown>;
}

export class SummaryPartView {
  name: 'answer today' | 'use first' | 'discard' | 'order' | 'orders due' | 'touch-ups at risk';
  /** The most pressing first; at most twenty. */
  lines: SummaryLineView[];
  /** How many more there are. */
  more: number;
}

/** What the summary of today would say now; nothing is kept of it. */
export class SummaryNowView {
  /** The studio's local day. */
  day: string;
  /** Only those with something to say. */
  parts: SummaryPartView[];
  /** When the next is sent to you; null: none is. */
  nextAt: string | null;
  /** Why none is sent to you; null: one is. */
  whyNone: 'not wanted' | 'no mail address and no browser that is told' | null;
}

export class SummaryDeliveryView {
  id: string;
  channel: 'log' | 'mail' | 'webhook' | 'push';
  destinationId: string | null;
  state: 'pending' | 'sent' | 'undeliverable';
  lastError: string | null;
  settledAt: string | null;
}

/** A summary as it was written on a morning. */
export class MorningSummaryView {
  id: string;
  /** The studio's local day. */
  day: string;
  createdAt: string;
  /** None: there was nothing to say, so nothing was sent. */
  parts: SummaryPartView[];
  deliveries: SummaryDeliveryView[];
}

export class MorningSummaryPageView {
  /** The latest first. */
  items: MorningSummaryView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
}

export class AlertView {
  id: string;
  /** Such as `low stock`, `use-by near`, `expired on the shelf`. */
  kind: string;
  /** What it is about, such as `product`, `lot` or `container`. */
  subjectKind: string;
  subjectId: string;
  severity: 'notice' | 'warning' | 'urgent';
  /** What a reader needs: names of products, lot codes, dates, quantities. */
  facts: Record<string, unknown>;
  openedAt: string;
  acknowledgedAt: string | null;
  /** The person who has seen to it. */
  acknowledgedBy: string | null;
  closedAt: string | null;
}

export class AlertPageView {
  /** The latest first. */
  items: AlertView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
}

export class AlertDeliveryView {
  id: string;
  event: 'opened' | 'closed';
  channel: string;
  state: 'pending' | 'sent' | 'undeliverable';
  attempts: number;
  /** When it is tried next, while it is pending. */
  nextAttemptAt: string;
  lastError: string | null;
  createdAt: string;
  settledAt: string | null;
}

/** What a sweep changed. */
export class SweepView {
  opened: number;
  refreshed: number;
  closed: number;
}

import { AlertDeliveryView } from '../alerts.views.js';

/** The alert that a delivery is of. */
export class DeliveredAlertView {
  id: string;
  kind: string;
  subjectKind: string;
  subjectId: string;
  severity: 'notice' | 'warning' | 'urgent';
  facts: Record<string, unknown>;
  closedAt: string | null;
}

/** Where a delivery goes. */
export class DeliveryDestinationView {
  id: string;
  /** Null for a webhook, which is the studio's. */
  personId: string | null;
  state: 'active' | 'paused' | 'stopped' | 'removed';
  stateReason: string | null;
}

/** A delivery with what it is of and where it goes. */
export class PromisedDeliveryView extends AlertDeliveryView {
  /** Null for a summary or a test. */
  alert: DeliveredAlertView | null;
  /** Null: the log of the service. */
  destination: DeliveryDestinationView | null;
}

export class PromisedDeliveryPageView {
  /** The latest first. */
  items: PromisedDeliveryView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
}

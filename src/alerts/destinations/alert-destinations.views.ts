export class AlertDestinationView {
  id: string;
  kind: 'mail' | 'webhook' | 'push';
  /** Null for a webhook, which is the studio's. */
  personId: string | null;
  /** What people call a webhook or a browser. Null for a mail address, and in the answer to a write, which is kept. */
  name: string | null;
  /**
   * The mail address; a webhook's address without its query, which may hold a key; the server of a browser's push service.
   * Null in the answer to a write.
   */
  address: string | null;
  /** SHA-256 in hex of a browser's own address (endpoint), by which it knows itself in the list; null for the others. */
  fingerprint: string | null;
  /** Milder alerts are not sent to a webhook. */
  minimumSeverity: 'notice' | 'warning' | 'urgent';
  /** Stopped: its receiver said that it is gone, or its person left. */
  state: 'active' | 'paused' | 'stopped' | 'removed';
  stateReason: string | null;
  version: number;
  createdAt: string;
}

export class AlertDestinationPageView {
  /** In the order they were added. */
  items: AlertDestinationView[];
  /** Hand it in as `after` for the next page; null: this was the last. */
  next: string | null;
  /** Whether mail can be sent: whoever runs the service set a mail server. What is mailed waits until then. */
  mailServerSet: boolean;
}

export class MadeWebhookView {
  destination: AlertDestinationView;
  /** `whsec_…`, by which the receiver checks what it gets: shown in this answer and never again. */
  secret: string;
}

export class RotatedSecretView {
  id: string;
  version: number;
  /** The new one, shown in this answer and never again. */
  secret: string;
  /** Until then messages are signed with the old one too. */
  oldValidUntil: string;
}

export class TestedDestinationView {
  id: string;
  /** The delivery that was promised; it goes the way of all others. */
  deliveryId: string;
}

export class PushKeyView {
  /** What a browser subscribes with (`applicationServerKey`): P-256, 65 bytes, base64url. */
  publicKey: string;
}

/** A person's mail address. */
export interface MailSettings {
  address: string;
}

/** Where the studio's own programs are told. */
export interface WebhookSettings {
  /** What people call it. */
  name: string;
  url: string;
  /** The one that signs, `whsec_…`, and before it those that still sign too until their instant. */
  secrets: { secret: string; until: string | null }[];
}

/** A browser, as it says itself how it is reached (PushSubscription of the Push API). */
export interface PushSettings {
  /** What its person calls it. */
  name: string;
  /** The address of the browser's push service. */
  endpoint: string;
  /** Public key of the browser, P-256, 65 bytes uncompressed, base64url. */
  p256dh: string;
  /** Secret shared with the browser, 16 bytes, base64url. */
  auth: string;
}

export type DestinationSettings = MailSettings | WebhookSettings | PushSettings;

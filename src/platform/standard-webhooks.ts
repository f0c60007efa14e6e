import { createHmac } from 'node:crypto';

export const secretPrefix = 'whsec_';

/** Headers that let a receiver check from whom a message is (Standard Webhooks 1.0.0 [P]). */
export interface SignedHeaders extends Record<string, string> {
  'webhook-id': string;
  'webhook-timestamp': string;
  'webhook-signature': string;
}

/**
 * Signs a message with each secret, the newest first, so that a receiver may know either while one takes the other's place.
 * @param id the same for each attempt; without a full stop
 * @param now ISO 8601 instant of this attempt
 * @param body the very text that is sent
 * @param secrets `whsec_` and base64 of 24 to 64 bytes each
 */
export function signedHeaders(
  id: string,
  now: string,
  body: string,
  secrets: readonly string[],
): SignedHeaders {
  const timestamp = String(Math.floor(Date.parse(now) / 1_000));
  const signatures = secrets.map((secret) => {
    const key = Buffer.from(secret.slice(secretPrefix.length), 'base64');
    return `v1,${createHmac('sha256', key).update(`${id}.${timestamp}.${body}`, 'utf8').digest('base64')}`;
  });
  return {
    'webhook-id': id,
    'webhook-timestamp': timestamp,
    'webhook-signature': signatures.join(' '),
  };
}

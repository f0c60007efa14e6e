import { createHmac, hash } from 'node:crypto';
import canonicalizeModule from 'canonicalize';

// The package is CommonJS with a default export, which Node and the compiler see differently.
const canonicalize = canonicalizeModule as unknown as (value: unknown) => string | undefined;

/**
 * The one text of a JSON value, keys sorted, by RFC 8785 (JSON Canonicalization Scheme).
 * @throws TypeError when the value has no JSON form
 */
export function canonicalJson(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('This value has no JSON form.');
  return text;
}

/** SHA-256 of the canonical text, as 64 hexadecimal digits. */
export function digestOf(value: unknown): string {
  return hash('sha256', canonicalJson(value));
}

/** HMAC-SHA-256 of the canonical text under a key, as 64 hexadecimal digits. */
export function keyedDigestOf(key: Buffer, value: unknown): string {
  return createHmac('sha256', key).update(canonicalJson(value), 'utf8').digest('hex');
}

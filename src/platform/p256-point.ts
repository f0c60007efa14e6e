import { ECDH } from 'node:crypto';

/** Whether a text is a public key on P-256: a point of the curve, uncompressed, 65 bytes in base64url (SEC 1, 2.3.3 [M]). */
export function isP256Point(text: unknown): boolean {
  if (typeof text !== 'string' || !/^[A-Za-z0-9_-]{87}=?$/.test(text)) return false;
  const bytes = Buffer.from(text, 'base64url');
  if (bytes.length !== 65 || bytes[0] !== 4) return false;
  try {
    ECDH.convertKey(bytes, 'prime256v1');
    return true;
  } catch {
    return false;
  }
}

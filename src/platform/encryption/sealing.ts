import { createCipheriv, createDecipheriv, randomBytes } from 'node:crypto';

const nonceBytes = 12;
const tagBytes = 16;

/**
 * Seals a text with AES-256-GCM (NIST SP 800-38D) under a fresh 96-bit nonce.
 * @param key 32 bytes
 * @param place where the text belongs (`client.name:<id>`): a sealed text moved elsewhere does not open
 * @returns base64 of nonce, ciphertext and tag
 */
export function seal(key: Buffer, plain: string | Buffer, place: string): string {
  const nonce = randomBytes(nonceBytes);
  const cipher = createCipheriv('aes-256-gcm', key, nonce);
  cipher.setAAD(Buffer.from(place, 'utf8'));
  const sealed = Buffer.concat([nonce, cipher.update(plain), cipher.final(), cipher.getAuthTag()]);
  return sealed.toString('base64');
}

/**
 * Opens what `seal` made.
 * @throws Error when key, place or content is not the one it was sealed with
 */
export function open(key: Buffer, sealed: string, place: string): Buffer {
  const bytes = Buffer.from(sealed, 'base64');
  if (bytes.length < nonceBytes + tagBytes) throw new Error('A sealed field is cut short.');
  const decipher = createDecipheriv('aes-256-gcm', key, bytes.subarray(0, nonceBytes), {
    authTagLength: tagBytes,
  });
  decipher.setAAD(Buffer.from(place, 'utf8'));
  decipher.setAuthTag(bytes.subarray(bytes.length - tagBytes));
  return Buffer.concat([
    decipher.update(bytes.subarray(nonceBytes, bytes.length - tagBytes)),
    decipher.final(),
  ]);
}

/** Characters that stand at the same place on the keyboards a hand scanner imitates, and that DataMatrix packs tightly. */
const badgeForm = /^LB([0-9A-F]{40})$/;

/** The bytes of a badge's secret: 160 bits, which nobody tries out. */
export const badgeSecretBytes = 20;

/**
 * What the symbol of a badge holds: `LB` and the secret in hexadecimal.
 * @param secret at least 20 bytes; the first 20 are taken
 */
export function badgeText(secret: Uint8Array): string {
  if (secret.length < badgeSecretBytes) {
    throw new RangeError(`A badge needs ${badgeSecretBytes} bytes, but was given ${secret.length}.`);
  }
  const digits = [...secret.subarray(0, badgeSecretBytes)].map((byte) => byte.toString(16).padStart(2, '0'));
  return `LB${digits.join('').toUpperCase()}`;
}

/** The badge in what a scanner sent, which may have changed case or added an end of line; undefined when it is none. */
export function readBadge(scanned: string): string | undefined {
  const text = scanned.trim().toUpperCase();
  return badgeForm.test(text) ? text : undefined;
}

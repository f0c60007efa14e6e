/** Random characters in a reference: 30 bits, so that it also says nothing of how many clients there are. */
export const clientReferenceCharacters = 6;

// Crockford's base 32: no I, L, O (read as digits) and no U.
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/**
 * A short code for a client that says nothing of the person, for screens at arm's length and for lists: `K7Q2-M4`.
 *
 * @param randomBytes at least six random bytes, of which five bits each are used
 * @throws RangeError when there are fewer bytes: a caller's mistake
 */
export function makeClientReference(randomBytes: Uint8Array): string {
  if (randomBytes.length < clientReferenceCharacters) {
    throw new RangeError(
      `A client reference needs ${clientReferenceCharacters} random bytes, but was given ${randomBytes.length}.`,
    );
  }
  const characters = Array.from(randomBytes.subarray(0, clientReferenceCharacters), (byte) =>
    alphabet.charAt(byte & 31),
  ).join('');
  return `${characters.slice(0, 4)}-${characters.slice(4)}`;
}

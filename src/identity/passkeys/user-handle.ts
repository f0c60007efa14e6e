/**
 * What an authenticator keeps of whose passkey it is: the account's id, which says nothing of the person (WebAuthn Level 3,
 * section 14.6.1 [M]).
 *
 * @param accountId a UUID
 * @returns its 16 bytes
 */
export function userHandleOf(accountId: string): Uint8Array<ArrayBuffer> {
  const digits = accountId.replaceAll('-', '');
  const bytes = new Uint8Array(digits.length / 2);
  for (let index = 0; index < bytes.length; index += 1) {
    bytes[index] = Number.parseInt(digits.slice(2 * index, 2 * index + 2), 16);
  }
  return bytes;
}

/** For whom a passkey is made and used: browsers bind it to the host name, and sign the origin they are on. */
export interface RelyingParty {
  /** The RP ID: a host name. */
  id: string;
  origin: string;
}

/**
 * The relying party of a page. Passkeys work at a host name with HTTPS, and on the machine itself as `localhost`; an IP
 * address is no host name, and plain HTTP elsewhere is not trusted by browsers (WebAuthn Level 3, section 5.1.3 step on the
 * effective domain, and Secure Contexts [M]).
 *
 * @param page origin of the page that asks; undefined for a program that tells none, which is taken to be at `publicUrl`
 * @param publicUrl origin people reach the service at
 * @param ownUrl origin of the service at its own machine
 * @returns undefined when passkeys do not work there
 */
export function relyingPartyOf(
  page: string | undefined,
  publicUrl: string,
  ownUrl: string,
): RelyingParty | undefined {
  const origin = page ?? publicUrl;
  if (origin !== publicUrl && origin !== ownUrl) return undefined;
  const { hostname: id, protocol } = new URL(origin);
  if (id === 'localhost') return { id, origin };
  const isAddress = id.startsWith('[') || /^\d+(\.\d+){3}$/.test(id);
  return protocol === 'https:' && !isAddress ? { id, origin } : undefined;
}

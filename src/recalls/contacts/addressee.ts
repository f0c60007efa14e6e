import type { ContactAudience } from '../vocabulary.js';

/** Whom a message is for, or whom somebody tried to tell: one of the three. */
export interface Addressee {
  clientId: string | null;
  artistId: string | null;
  company: string | null;
}

/** As a request names them. */
export interface NamedAddressee {
  audience: ContactAudience;
  clientId?: string;
  artistId?: string;
  company?: string;
}

const nameOf = {
  client: 'clientId',
  artist: 'artistId',
  supplier: 'company',
  authority: 'company',
} as const satisfies Record<ContactAudience, keyof Addressee>;

/**
 * Reads whom a request names: by the one id or name that goes with its audience, and by no other.
 *
 * @returns else the fields that are missing or too many, in words that follow their names
 */
export function readAddressee(
  named: NamedAddressee,
): { addressee: Addressee } | { faults: { field: string; message: string }[] } {
  const wanted = nameOf[named.audience];
  const given = (['clientId', 'artistId', 'company'] as const).filter((field) => named[field] !== undefined);
  const faults = given
    .filter((field) => field !== wanted)
    .map((field) => ({ field, message: `is not taken with the audience ${named.audience}; leave it out` }));
  if (!given.includes(wanted)) {
    faults.push({ field: wanted, message: `is missing; it says which ${named.audience} is meant` });
  }
  if (faults.length > 0) return { faults };
  const { clientId = null, artistId = null, company = null } = named;
  return { addressee: { clientId, artistId, company } };
}

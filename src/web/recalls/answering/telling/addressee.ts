import type { Permission } from '../../../../identity/permissions.js';
import type { RecipientView } from '../../../../recalls/contacts/contacts.views.js';
import type { ContactAudience } from '../../../../recalls/vocabulary.js';

/** Whom a message or an attempt is for: by the one id or name that goes with the audience. */
export type Addressee =
  | { audience: 'client'; clientId: string }
  | { audience: 'artist'; artistId: string }
  | { audience: 'supplier' | 'authority'; company: string };

/** As a request names somebody of the list; undefined: the list names nobody. */
export function addresseeOf({
  audience,
  clientId,
  artistId,
  company,
}: Pick<RecipientView, 'audience' | 'clientId' | 'artistId' | 'company'>): Addressee | undefined {
  if (audience === 'client') return clientId === null ? undefined : { audience, clientId };
  if (audience === 'artist') return artistId === null ? undefined : { audience, artistId };
  return company === null ? undefined : { audience, company };
}

/** Whether a role tells these people. */
export function mayTell(permissions: readonly Permission[], audience: ContactAudience): boolean {
  return (
    permissions.includes('answer recalls') &&
    (audience !== 'client' || permissions.includes('tell clients of recalls'))
  );
}

import { type ContactStanding, isSettled } from '../contacts/contact-standing.js';

/** How it stands with telling one client. */
export type ContactState = ContactStanding | 'erased, cannot be told';

/** @param erased whether who the client was is not known any more */
export function contactState(standing: ContactStanding, erased: boolean): ContactState {
  return erased && !isSettled(standing) ? 'erased, cannot be told' : standing;
}

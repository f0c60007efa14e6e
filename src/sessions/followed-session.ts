import type { SessionState } from './vocabulary.js';

export interface FollowedFacts {
  sessionId: string;
  clientId: string;
  state: SessionState;
}

/**
 * What stands against naming a session as the one that a visit touches up, refreshes or corrects: it must be another
 * visit of the same client that took place or still may.
 *
 * @returns null when nothing does, else words for a person
 */
export function whyNotFollowed(
  visit: { sessionId: string; clientId: string },
  followed: FollowedFacts,
): string | null {
  if (followed.sessionId === visit.sessionId) {
    return 'A session cannot follow itself. Name an earlier session of this client, or leave it out.';
  }
  if (followed.clientId !== visit.clientId) {
    return 'The session named belongs to another client. Name an earlier session of this client, or leave it out.';
  }
  if (followed.state === 'cancelled' || followed.state === 'not attended') {
    return `The session named was ${followed.state}, so there is nothing to follow. Name one that took place or is planned, or leave it out.`;
  }
  return null;
}

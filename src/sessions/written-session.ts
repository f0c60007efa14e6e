import type { SessionState } from './vocabulary.js';

/** What is known of a session, of which more may be known than is told. */
export interface SessionToTell {
  id: string;
  state: SessionState;
  version: number;
  clientId: string;
  followsSessionId: string | null;
}

export interface UseToTell {
  id: string;
  lotId: string;
  containerId: string;
  mixId: string | null;
  pieces: number;
  microlitres: number;
  againstRefusal: string[] | null;
}

type FollowsBecause = 'named' | 'latest completed first session of this procedure' | null;

/** What a write to a session answers. Answers are kept for a repeated request, so nothing sealed is among it. */
export function writtenSession(
  session: SessionToTell,
  clientReference: string,
  followsBecause: FollowsBecause = null,
) {
  const { id, state, version, clientId, followsSessionId } = session;
  return { id, state, version, clientId, clientReference, followsSessionId, followsBecause };
}

/** The same of a use. */
export function writtenUse({
  id,
  lotId,
  containerId,
  mixId,
  pieces,
  microlitres,
  againstRefusal,
}: UseToTell) {
  return {
    id,
    lotId,
    containerId,
    mixId,
    pieces,
    microlitres,
    againstRefusal: againstRefusal ?? [],
  };
}

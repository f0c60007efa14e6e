import { localDay } from '../identity/local-day.js';
import { hasEnded } from './container-transitions.js';
import type { ContainerCandidate } from './first-expired.js';
import { type ContainerOnHand, containerLife } from './stock-on-hand.js';

/** A container as the record has it. */
export interface CandidateFacts
  extends Pick<
    ContainerOnHand,
    'containerId' | 'form' | 'state' | 'useBy' | 'openedAt' | 'openedLife' | 'usableThrough'
  > {
  /** ISO 8601 instant. */
  receivedAt: string;
  /** Pieces that may still be taken of it; a bottle is one. */
  pieces: number;
  holds: readonly object[];
}

/**
 * A container in the form in which first-expired-first-out orders it.
 *
 * @param assumedOpenedLife the studio's own opened life, ISO 8601 duration; null: it assumes none
 * @param timeZone IANA time zone of the studio
 */
export function containerCandidate<Facts extends CandidateFacts>(
  container: Facts,
  assumedOpenedLife: string | null,
  timeZone: string,
): ContainerCandidate & { container: Facts } {
  const { containerId, state, pieces, holds, receivedAt } = container;
  return {
    ...containerLife(container, assumedOpenedLife),
    container,
    id: containerId,
    receivedOn: localDay(receivedAt, timeZone),
    held: holds.length > 0,
    practice: state === 'practice only',
    finished: hasEnded(state) || pieces <= 0,
  };
}

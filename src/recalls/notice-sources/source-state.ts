import { Temporal } from 'temporal-polyfill';
import { afterFailure, type BackoffLimits } from '../../alerts/outbox/backoff.js';

/** How it stands with one source. Instants are ISO 8601 in UTC. */
export interface SourceState {
  /** What the source calls the version that was read last; sent along, so that it need not answer with the same again. */
  etag: string | null;
  lastModified: string | null;
  /** When it was last asked, with or without success. */
  triedAt: string | null;
  /** When it last answered with something that could be read, or that nothing is new. */
  readAt: string | null;
  /** How often in turn it failed; what will not mend by itself counts as given up. */
  failures: number;
  lastError: string | null;
  nextAttemptAt: string;
}

/** What became of asking a source. */
export type SourceOutcome =
  | { kind: 'read'; etag: string | null; lastModified: string | null }
  | { kind: 'unchanged' }
  | {
      kind: 'failed';
      /** A sentence. */
      error: string;
      /** Asking again soon would change nothing: it leads elsewhere, is not there, or holds something else. */
      isLasting: boolean;
      /** When the source asked us to come back. */
      retryAt: string | null;
    };

/** Two to three hours, then once a day; from the last of these on it is said to be failing. */
export const sourceBackoff: BackoffLimits = {
  maximumAttempts: 6,
  firstWaitSeconds: 300,
  longestWaitSeconds: 3_600,
};

const betweenFetchesHours = 24;

/** A source that was never asked, and is to be at once. */
export function newSource(now: string): SourceState {
  return {
    etag: null,
    lastModified: null,
    triedAt: null,
    readAt: null,
    failures: 0,
    lastError: null,
    nextAttemptAt: now,
  };
}

/**
 * What follows from an outcome: when the source is asked next, and how often it failed.
 * @param now ISO 8601 instant
 * @param draw from 0 up to, not including, 1
 */
export function afterOutcome(
  state: SourceState,
  outcome: SourceOutcome,
  now: string,
  draw: number,
): SourceState {
  const tomorrow = Temporal.Instant.from(now)
    .add({ hours: betweenFetchesHours })
    .toString({ fractionalSecondDigits: 3 });
  if (outcome.kind !== 'failed') {
    const { etag, lastModified } = outcome.kind === 'read' ? outcome : state;
    return {
      etag,
      lastModified,
      triedAt: now,
      readAt: now,
      failures: 0,
      lastError: null,
      nextAttemptAt: tomorrow,
    };
  }
  const { error, isLasting, retryAt } = outcome;
  const failures = isLasting
    ? Math.max(state.failures + 1, sourceBackoff.maximumAttempts)
    : state.failures + 1;
  const after = afterFailure(failures, now, draw, sourceBackoff);
  const own = after.state === 'pending' ? after.nextAttemptAt : tomorrow;
  return { ...state, triedAt: now, failures, lastError: error, nextAttemptAt: retryAt ?? own };
}

/** Whether people are to be told: it failed as often as it is tried in a row, or will not mend by itself. */
export function isFailing({ failures }: SourceState): boolean {
  return failures >= sourceBackoff.maximumAttempts;
}

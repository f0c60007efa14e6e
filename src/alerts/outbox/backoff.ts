import { Temporal } from 'temporal-polyfill';

/** How often, and how far apart, a delivery is tried. */
export interface BackoffLimits {
  maximumAttempts: number;
  /** Wait before the second attempt; each later one waits twice as long as the one before. */
  firstWaitSeconds: number;
  longestWaitSeconds: number;
}

/** Ten to twenty hours: from the eleventh attempt on the waits are an hour at most, after the thirtieth it is given up. */
export const deliveryBackoff: BackoffLimits = {
  maximumAttempts: 30,
  firstWaitSeconds: 5,
  longestWaitSeconds: 3_600,
};

/** A receiver that asks for more patience than a day is asked again after a day. */
const longestPatienceSeconds = 86_400;

/** What is known of a failed attempt. */
export interface Failure {
  /** Trying again would end the same. */
  isLasting: boolean;
  /** ISO 8601 instant before which the receiver wants no other attempt; null: it said none. */
  retryAt: string | null;
}

export type AfterFailure = { state: 'pending'; nextAttemptAt: string } | { state: 'undeliverable' };

/**
 * What becomes of a delivery after a failed attempt. The wait is drawn from the upper half of its range, so that what
 * failed together is not tried together again; when the receiver asked for a longer one, it is that.
 *
 * @param attempts how many were made, the failed one included
 * @param failedAt ISO 8601 instant
 * @param draw from 0 up to, not including, 1
 */
export function afterFailure(
  attempts: number,
  failedAt: string,
  draw: number,
  limits: BackoffLimits = deliveryBackoff,
  { isLasting, retryAt }: Failure = { isLasting: false, retryAt: null },
): AfterFailure {
  if (isLasting || attempts >= limits.maximumAttempts) return { state: 'undeliverable' };
  const wait = Math.min(limits.longestWaitSeconds, limits.firstWaitSeconds * 2 ** (attempts - 1));
  const milliseconds = Math.round((wait / 2 + (wait / 2) * draw) * 1000);
  const failed = Temporal.Instant.from(failedAt);
  const ours = failed.add({ milliseconds });
  const next = retryAt === null ? ours : later(ours, patience(failed, retryAt));
  return { state: 'pending', nextAttemptAt: written(next) };
}

/**
 * Until when an attempt belongs to whoever began it: longer than the longest send, so that it is not begun beside itself.
 * Whatever is not settled by then was cut off. One that was cut off again and again waits longer each time, lest it be
 * what ends the process.
 *
 * @param begunAt ISO 8601 instant
 * @param cutOff how many attempts were cut off before
 */
export function leaseEnd(begunAt: string, cutOff: number): string {
  const { firstLeaseSeconds, longestLeaseSeconds } = deliveryLease;
  const seconds = Math.min(longestLeaseSeconds, firstLeaseSeconds * 2 ** Math.min(cutOff, 30));
  return written(Temporal.Instant.from(begunAt).add({ seconds }));
}

export const deliveryLease = { longestSendSeconds: 120, firstLeaseSeconds: 150, longestLeaseSeconds: 3_600 };

/**
 * Later than any delivery that waits, be it for a receiver, for the end of somebody's quiet hours or for its lease.
 * @param now ISO 8601 instant
 */
export function beyondAnyWait(now: string): string {
  return written(Temporal.Instant.from(now).add({ seconds: 2 * longestPatienceSeconds }));
}

function patience(failed: Temporal.Instant, retryAt: string): Temporal.Instant {
  const wanted = Temporal.Instant.from(retryAt);
  const longest = failed.add({ seconds: longestPatienceSeconds });
  return Temporal.Instant.compare(wanted, longest) > 0 ? longest : wanted;
}

function later(one: Temporal.Instant, other: Temporal.Instant): Temporal.Instant {
  return Temporal.Instant.compare(one, other) > 0 ? one : other;
}

/** As the record writes instants, so that they sort as texts. */
function written(instant: Temporal.Instant): string {
  return instant.toString({ fractionalSecondDigits: 3 });
}

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

export type AfterFailure = { state: 'pending'; nextAttemptAt: string } | { state: 'undeliverable' };

/**
 * What becomes of a delivery after a failed attempt. The wait is drawn from the upper half of its range, so that what
 * failed together is not tried together again.
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
): AfterFailure {
  if (attempts >= limits.maximumAttempts) return { state: 'undeliverable' };
  const wait = Math.min(limits.longestWaitSeconds, limits.firstWaitSeconds * 2 ** (attempts - 1));
  const milliseconds = Math.round((wait / 2 + (wait / 2) * draw) * 1000);
  const next = Temporal.Instant.from(failedAt).add({ milliseconds });
  return { state: 'pending', nextAttemptAt: next.toString({ fractionalSecondDigits: 3 }) };
}

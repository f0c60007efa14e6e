/** Wrong sign-ins in a row that cost nothing: typing slips. */
const freeFailures = { account: 5, device: 10, address: 20 } as const;

/** After the free ones each further failure doubles the wait, up to this. */
const longestWaitSeconds = 900;

/** What is waited for: an account, from a device that never signed in to it; a device that did; an address. */
export type ThrottledSubject = keyof typeof freeFailures;

export interface Failures {
  subject: ThrottledSubject;
  failures: number;
  /** Instant of the last failure. */
  lastFailedAt: string;
}

/**
 * How long signing in has to wait. The wait ends by itself and attempts during a wait are not counted, so no stranger can
 * lock an account for good; and since a device that once signed in is counted apart from all others (the device cookies of
 * OWASP's "Blocking Brute Force Attacks" [M]), its owner does not wait for a stranger at all.
 *
 * @param now instant
 * @returns whole seconds to wait; 0 when an attempt may be made
 */
export function secondsToWait(known: readonly Failures[], now: string): number {
  return Math.max(0, ...known.map((failures) => waitOf(failures, now)));
}

function waitOf({ subject, failures, lastFailedAt }: Failures, now: string): number {
  const beyond = failures - freeFailures[subject];
  if (beyond < 0) return 0;
  // 2^10 seconds are beyond the longest wait already.
  const wait = Math.min(2 ** Math.min(beyond, 10), longestWaitSeconds);
  const passed = (Date.parse(now) - Date.parse(lastFailedAt)) / 1000;
  return Math.max(0, Math.ceil(wait - passed));
}

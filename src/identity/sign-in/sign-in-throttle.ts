/** What is waited for: an account, from a device that never signed in to it; a device that did; an address; a PIN on a tablet. */
export type ThrottledSubject = 'account' | 'device' | 'address' | 'PIN';

/**
 * Wrong attempts in a row that cost nothing, being slips of the hand, and the longest wait after them: each further one
 * doubles it. A PIN is one of few, so it is given fewer attempts and a longer wait; the badge never waits.
 */
const limits = {
  account: { free: 5, longestWaitSeconds: 900 },
  device: { free: 10, longestWaitSeconds: 900 },
  address: { free: 20, longestWaitSeconds: 900 },
  PIN: { free: 3, longestWaitSeconds: 3_600 },
} as const satisfies Record<ThrottledSubject, object>;

/** 2^12 seconds are beyond every longest wait. */
const mostDoublings = 12;

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
  const { free, longestWaitSeconds } = limits[subject];
  const beyond = failures - free;
  if (beyond < 0) return 0;
  const wait = Math.min(2 ** Math.min(beyond, mostDoublings), longestWaitSeconds);
  const passed = (Date.parse(now) - Date.parse(lastFailedAt)) / 1000;
  return Math.max(0, Math.ceil(wait - passed));
}

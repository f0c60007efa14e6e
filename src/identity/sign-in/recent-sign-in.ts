/** How long after signing in somebody may change how they sign in, or make another lasting way in. */
const recentMinutes = 10;

/**
 * Whether somebody signed in lately enough to do so: else they sign in again first, so that a browser left alone gives
 * nobody a lasting way in (OWASP ASVS 5.0, 7.5.1 [P]).
 *
 * @param since instant of signing in
 * @param now instant
 */
export function isRecent(since: string, now: string): boolean {
  return Date.parse(now) - Date.parse(since) <= recentMinutes * 60_000;
}

/** So long a plan belongs to the process that makes it, unless that process says again that it is at it. */
const leaseMilliseconds = 90_000;

/**
 * Until when a plan belongs to whoever begins it, or goes on with it, now.
 * @param now ISO 8601 instant, as the result
 */
export function planLeaseEnd(now: string): string {
  return after(now, leaseMilliseconds);
}

/**
 * Whether somebody still makes a plan. What is held for longer than any lease lasts was written by a clock that was wrong.
 * @param heldUntil ISO 8601 instant; null: nobody has it
 */
export function isPlanHeld(heldUntil: string | null, now: string): boolean {
  return heldUntil !== null && heldUntil > now && heldUntil <= after(now, 2 * leaseMilliseconds);
}

function after(instant: string, milliseconds: number): string {
  return new Date(Date.parse(instant) + milliseconds).toISOString();
}

/**
 * How many attempts of a delivery were cut off, so that nobody knows whether the receiver got it: it may have got it as
 * often more.
 * @param begun null for rows of a time when what was begun was not counted
 */
export function unknownAttempts({ begun, attempts }: { begun: number | null; attempts: number }): number {
  return begun === null ? 0 : Math.max(0, begun - attempts);
}

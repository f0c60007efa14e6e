/** The camera is looked at at most ten times a second: a hand that holds something still for a moment is seen. */
const shortestMilliseconds = 100;

/** Never more than two thirds of the time are spent reading, so that a slow device stays cool and answers at once. */
const restShare = 0.5;

/**
 * How long to rest before the next look.
 * @param tookMilliseconds the last look, from taking the picture to having read it
 */
export function restAfterLook(tookMilliseconds: number): number {
  return Math.max(shortestMilliseconds - tookMilliseconds, tookMilliseconds * restShare);
}

const soonMilliseconds = 1_000;
const laterMilliseconds = 10_000;
/** After so many looks it takes longer, and nobody stares at it any more. */
const soonLooks = 30;

/** How long until what is under way is looked at again: soon at first, then seldom. In milliseconds. */
export function untilNextLook(looks: number): number {
  return looks < soonLooks ? soonMilliseconds : laterMilliseconds;
}

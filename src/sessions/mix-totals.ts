/** One addition to a mix; a negative one takes a slip back. */
export interface MixAddition {
  mixId: string;
  containerId: string;
  lotId: string;
  /** Null when the amount was given as a volume. */
  drops: number | null;
  microlitres: number;
}

/** What of one container is in one mix; drops are null when any of it was given as a volume. */
export type MixTotal = MixAddition;

/**
 * Sums additions by mix and container, in the order of their first addition. What was taken back whole is left out.
 *
 * @returns a total for each mix and container, with whatever else the first addition tells
 */
export function mixTotals<Addition extends MixAddition>(additions: readonly Addition[]): Addition[] {
  return mixSums(additions).filter((total) => total.microlitres !== 0);
}

/** The same of what was used of mixes, where nothing is taken back and an amount may not be known. */
export function mixSums<Addition extends MixAddition>(additions: readonly Addition[]): Addition[] {
  const totals = new Map<string, Addition>();
  for (const addition of additions) {
    const key = `${addition.mixId} ${addition.containerId}`;
    const total = totals.get(key);
    if (!total) {
      totals.set(key, { ...addition });
      continue;
    }
    total.microlitres += addition.microlitres;
    total.drops = total.drops === null || addition.drops === null ? null : total.drops + addition.drops;
  }
  return [...totals.values()];
}

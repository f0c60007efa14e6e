/** One addition to a mix; a negative one takes a slip back. */
export interface MixAddition {
  mixId: string;
  containerId: string;
  lotId: string;
  /** Null when the amount was given as a volume. */
  drops: number | null;
  microlitres: number;
}

/** What of one container is in one mix. */
export interface MixTotal {
  mixId: string;
  containerId: string;
  lotId: string;
  /** Null when any of it was given as a volume. */
  drops: number | null;
  microlitres: number;
}

/**
 * Sums additions by mix and container, in the order of their first addition. What was taken back whole is left out.
 */
export function mixTotals(additions: readonly MixAddition[]): MixTotal[] {
  const totals = new Map<string, MixTotal>();
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
  return [...totals.values()].filter((total) => total.microlitres !== 0);
}

import type { AmountDistribution, ExpectedUse } from './demand-model.js';

/** Uses likelier than that stay one by one. */
const SMALL_CHANCE = 0.05;
/** Joined uses come at most this likely: that two of them come is then rare enough to be left out. */
const LARGEST_JOINED = 0.1;

/**
 * Joins uses that hardly ever come: those of one day with one distribution of amounts become one use with the sum of their
 * chances. What is expected stays the same, and a year of bookings costs no more than its likely uses do.
 */
export function joinSmallChances(uses: readonly ExpectedUse[]): ExpectedUse[] {
  const kept: ExpectedUse[] = [];
  const open = new Map<AmountDistribution, Map<string, ExpectedUse>>();
  for (const use of uses) {
    if (!(use.chance > 0)) continue;
    if (use.chance > SMALL_CHANCE || use.dayWeights.length > 1) {
      kept.push(use);
      continue;
    }
    const ofAmount = open.get(use.amount) ?? new Map<string, ExpectedUse>();
    open.set(use.amount, ofAmount);
    const key = `${use.firstDay} ${use.source}`;
    const joined = ofAmount.get(key);
    if (joined && joined.chance + use.chance <= LARGEST_JOINED) {
      joined.chance += use.chance;
      continue;
    }
    const started = { ...use };
    ofAmount.set(key, started);
    kept.push(started);
  }
  return kept;
}

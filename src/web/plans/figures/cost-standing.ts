export type CostStanding = 'least' | 'within the error' | 'not least';

/**
 * How a choice stands among those it is shown with, so that no sentence says more than the figures do.
 * @param leastExtraMinor what the cheapest of the others costs more; negative: less
 * @param standardErrorMinor of the cost of the choice
 */
export function costStanding(leastExtraMinor: number, standardErrorMinor: number): CostStanding {
  if (Math.round(leastExtraMinor) >= 0) return 'least';
  return -leastExtraMinor <= 2 * standardErrorMinor ? 'within the error' : 'not least';
}

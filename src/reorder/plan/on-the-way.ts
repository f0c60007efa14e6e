import type { DaysDistribution } from '../projection/item-facts.js';

/** An order that was sent and is not here yet; days count from the day of the plan. */
export interface SentOrder {
  /** At most 0. */
  sentOn: number;
  /** When it is said to come; null: nobody says. */
  expectedOn: number | null;
}

/**
 * When an order that is on its way arrives: as such orders do, given that it has not come so far. Where a day is said, the
 * distribution is moved so that its middle falls on it. One that is later than any order ever was is taken to come after
 * half as many days again as are usual, at least one.
 */
export function arrivalOfOrder(
  { sentOn, expectedOn }: SentOrder,
  leadTime: DaysDistribution,
): { arrival: DaysDistribution; overdue: boolean } {
  const middle = medianOf(leadTime);
  const moved = expectedOn === null ? sentOn : expectedOn - middle;
  const days: number[] = [];
  const weights: number[] = [];
  let total = 0;
  for (const [index, each] of leadTime.days.entries()) {
    const day = moved + each;
    const weight = leadTime.weights[index] ?? 0;
    if (day < 0 || weight <= 0) continue;
    days.push(day);
    weights.push(weight);
    total += weight;
  }
  if (total <= 0) {
    return { arrival: { days: [Math.max(1, Math.ceil(middle / 2))], weights: [1] }, overdue: true };
  }
  return { arrival: { days, weights: weights.map((weight) => weight / total) }, overdue: false };
}

/** The first day by which at least half have come. */
function medianOf({ days, weights }: DaysDistribution): number {
  let sum = 0;
  for (const [index, each] of days.entries()) {
    sum += weights[index] ?? 0;
    if (sum >= 0.5 - 1e-12) return each;
  }
  return days.at(-1) ?? 0;
}

import type { DaysDistribution } from '../projection/item-facts.js';

/** The smallest number of days that is enough with the given chance; 0 when nothing is given. */
export function daysQuantile({ days, weights }: DaysDistribution, chance: number): number {
  const inOrder = days.map((day, index) => ({ day, weight: weights[index] ?? 0 }));
  inOrder.sort((left, right) => left.day - right.day);
  let sum = 0;
  for (const { day, weight } of inOrder) {
    sum += weight;
    // Weights add up to 1 but for rounding.
    if (weight > 0 && sum >= chance - 1e-9) return day;
  }
  return inOrder.at(-1)?.day ?? 0;
}

/** The mean number of days. */
export function meanDays({ days, weights }: DaysDistribution): number {
  let sum = 0;
  let total = 0;
  for (const [index, day] of days.entries()) {
    const weight = weights[index] ?? 0;
    sum += day * weight;
    total += weight;
  }
  return total > 0 ? sum / total : 0;
}

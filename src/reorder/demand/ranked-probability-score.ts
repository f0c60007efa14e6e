/**
 * How far a distribution of counts was from what came: the sum over all counts of the squared distance of its cumulative
 * probability from 0 below what came and from 1 from there on. Smaller is better; no other distribution than the one
 * believed in has a better expectation. Epstein 1969, J. Appl. Meteorol. 8:985–987.
 *
 * @param probabilities chances of 0, 1, 2, …
 * @param came whole, at least 0
 */
export function rankedProbabilityScore(probabilities: ArrayLike<number>, came: number): number {
  let score = 0;
  let cumulative = 0;
  const length = Math.max(probabilities.length, came);
  for (let count = 0; count < length; count++) {
    cumulative += probabilities[count] ?? 0;
    score += (count >= came ? 1 - cumulative : cumulative) ** 2;
  }
  return score;
}

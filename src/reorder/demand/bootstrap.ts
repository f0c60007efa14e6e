/**
 * The chances of 0, 1, 2, … as the sum of so many draws with replacement from counts: the bootstrap without its noise,
 * since all that can be drawn is added up exactly.
 *
 * @param counts whole, at least 0; each as likely
 * @param draws whole, at least 0
 * @param upTo the largest sum whose chance is asked for; left out: the largest there is
 */
export function sumOfDraws(
  counts: readonly number[],
  draws: number,
  upTo = Number.POSITIVE_INFINITY,
): Float64Array {
  if (counts.length === 0) return Float64Array.of(1);
  const times = new Map<number, number>();
  for (const count of counts) times.set(count, (times.get(count) ?? 0) + 1);
  const largest = Math.max(...times.keys());
  let sums = Float64Array.of(1);
  for (let draw = 0; draw < draws; draw++) {
    const next = new Float64Array(Math.min(sums.length + largest, upTo + 1));
    for (const [count, seen] of times) {
      const chance = seen / counts.length;
      const last = Math.min(sums.length, next.length - count);
      for (let sum = 0; sum < last; sum++)
        next[sum + count] = (next[sum + count] ?? 0) + (sums[sum] ?? 0) * chance;
    }
    sums = next;
  }
  return sums;
}

/** The chance of one sum of so many draws: cheaper than all of them, as the sum of two halves. */
export function chanceOfSum(counts: readonly number[], draws: number, sum: number): number {
  const half = Math.floor(draws / 2);
  const one = sumOfDraws(counts, half, sum);
  const other = draws === 2 * half ? one : sumOfDraws(counts, draws - half, sum);
  let chance = 0;
  for (let part = Math.max(0, sum + 1 - other.length); part < one.length; part++) {
    chance += (one[part] ?? 0) * (other[sum - part] ?? 0);
  }
  return chance;
}

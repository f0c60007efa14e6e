/**
 * The chances of 0, 1, 2, … as the sum of so many draws with replacement from counts: the bootstrap without its noise,
 * since all that can be drawn is added up exactly.
 *
 * @param counts whole, at least 0; each as likely
 * @param draws whole, at least 0
 */
export function sumOfDraws(counts: readonly number[], draws: number): number[] {
  const times = new Map<number, number>();
  for (const count of counts) times.set(count, (times.get(count) ?? 0) + 1);
  const chances = [...times].map(([count, seen]) => [count, seen / counts.length] as const);
  const largest = counts.reduce((most, count) => Math.max(most, count), 0);
  let sums: number[] = [1];
  if (chances.length === 0) return sums;
  for (let draw = 0; draw < draws; draw++) {
    const longer = new Array<number>(sums.length + largest).fill(0);
    for (const [count, chance] of chances) {
      for (let sum = 0; sum < sums.length; sum++) {
        longer[sum + count] = (longer[sum + count] ?? 0) + (sums[sum] ?? 0) * chance;
      }
    }
    sums = longer;
  }
  return sums;
}

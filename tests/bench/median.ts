/** @throws RangeError of no values */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((first, second) => first - second);
  const middle = sorted[Math.floor((sorted.length - 1) / 2)];
  const next = sorted[Math.ceil((sorted.length - 1) / 2)];
  if (middle === undefined || next === undefined) throw new RangeError('There is no median of no values.');
  return (middle + next) / 2;
}

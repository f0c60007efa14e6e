/**
 * A figure as it is kept: rounded to four digits after the point, which is finer than any of them is known.
 *
 * @throws RangeError when it is no number: a fault of the computation is never kept as a figure
 */
export function figure(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`A figure came out as ${value}.`);
  return Math.round(value * 1e4) / 1e4 + 0;
}

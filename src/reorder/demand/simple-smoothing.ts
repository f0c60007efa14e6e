/**
 * Simple exponential smoothing of the mean of a period, after each number of periods seen: entry t knows the first t
 * periods, and nothing of the later ones.
 *
 * The weights of what was seen fall by 1 − alpha a period and are scaled to add up to 1, so no first level needs to be
 * assumed: the first forecast is the first period, and early ones are close to the plain mean.
 *
 * @param alpha weight of the newest period once many were seen, above 0 and at most 1
 */
export function simpleSmoothingLevels(series: ArrayLike<number>, alpha: number): Float64Array {
  const levels = new Float64Array(series.length + 1);
  let sum = 0;
  let weights = 0;
  for (let index = 0; index < series.length; index++) {
    sum = sum * (1 - alpha) + (series[index] ?? 0);
    weights = weights * (1 - alpha) + 1;
    levels[index + 1] = sum / weights;
  }
  return levels;
}

/**
 * Croston's forecast of the mean of a period, after each number of periods seen: entry t knows the first t periods.
 *
 * Sizes and intervals are smoothed apart, at demands only. The first size is the first demand, the first interval the
 * periods from the beginning to it. Before any demand the forecast is 0. It does not fall while nothing is needed.
 *
 * Croston 1972, Oper. Res. Q. 23:289–303.
 *
 * @param alpha weight of the newest size and interval, above 0 and at most 1
 */
export function crostonLevels(series: ArrayLike<number>, alpha: number): Float64Array {
  const levels = new Float64Array(series.length + 1);
  let size = 0;
  let interval = 0;
  let sinceDemand = 0;
  for (let index = 0; index < series.length; index++) {
    const demand = series[index] ?? 0;
    sinceDemand++;
    if (demand > 0) {
      const first = interval === 0;
      size = first ? demand : size + alpha * (demand - size);
      interval = first ? sinceDemand : interval + alpha * (sinceDemand - interval);
      sinceDemand = 0;
    }
    levels[index + 1] = interval === 0 ? 0 : size / interval;
  }
  return levels;
}

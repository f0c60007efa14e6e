import { crostonLevels } from './croston.js';

/**
 * Croston's forecasts, corrected for their bias: times 1 − alpha/2. Entry t knows the first t periods.
 *
 * Syntetos & Boylan 2005, Int. J. Forecasting 21:303–314.
 *
 * @param alpha weight of the newest size and interval, above 0 and at most 1
 */
export function syntetosBoylanLevels(series: ArrayLike<number>, alpha: number): Float64Array {
  const levels = crostonLevels(series, alpha);
  const correction = 1 - alpha / 2;
  for (let index = 0; index < levels.length; index++) levels[index] = (levels[index] ?? 0) * correction;
  return levels;
}

/**
 * The forecast of the mean of a period by Teunter, Syntetos and Babai, after each number of periods seen: entry t knows
 * the first t periods, and nothing of the later ones.
 *
 * The size of a demand is smoothed at demands, the probability of one in every period, so that it falls when demand ends.
 * The size starts at the first demand; the probability at the share of periods with demand among those seen, and goes on
 * from the second period.
 *
 * Teunter, Syntetos & Babai 2011, Eur. J. Oper. Res. 214:606–615, doi 10.1016/j.ejor.2011.05.018.
 *
 * @param alpha weight of the newest size, above 0 and at most 1
 * @param beta weight of the newest period in the probability, above 0 and at most 1
 */
export function teunterSyntetosBabaiLevels(
  series: ArrayLike<number>,
  alpha: number,
  beta: number,
): Float64Array {
  const levels = new Float64Array(series.length + 1);
  let size = 0;
  let demands = 0;
  // The recursion is linear in its start: what it makes of 0, and what is left of the start itself.
  let fromZero = 0;
  let startLeft = 1;
  for (let index = 0; index < series.length; index++) {
    const demand = series[index] ?? 0;
    const occurs = demand > 0 ? 1 : 0;
    if (occurs === 1) {
      size = demands === 0 ? demand : size + alpha * (demand - size);
      demands++;
    }
    if (index > 0) {
      fromZero += beta * (occurs - fromZero);
      startLeft *= 1 - beta;
    }
    const start = demands / (index + 1);
    levels[index + 1] = (fromZero + startLeft * start) * size;
  }
  return levels;
}

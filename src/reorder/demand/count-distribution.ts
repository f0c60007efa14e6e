import negativeBinomialProbability from '@stdlib/stats-base-dists-negative-binomial-pmf';
import poissonProbability from '@stdlib/stats-base-dists-poisson-pmf';
import { chanceOfSum, sumOfDraws } from './bootstrap.js';
import type { CountComponent } from './demand-model.js';

/** What is left out in the upper tail of a distribution. */
const TAIL = 1e-12;
/** Below it the chance of 0 is too small to begin a recursion with. */
const SMALLEST_START = 1e-250;
/** From 0 up to more than that it is quicker to ask at once. */
const LONGEST_CLIMB = 60;
/** Closer to Poisson than that is Poisson. */
const LEAST_OVERDISPERSION = 1e-9;
/** A cumulative probability that misses a level by less meets it: rounding, not chance. */
const ROUNDING = 1e-12;

/** The chance of `count` + 1 over that of `count`. */
function ratioOfNeighbours(mean: number, dispersion: number): (count: number) => number {
  if (dispersion - 1 < LEAST_OVERDISPERSION) return (count) => mean / (count + 1);
  const failure = 1 - 1 / dispersion;
  const successes = mean / (dispersion - 1);
  return (count) => ((count + successes) / (count + 1)) * failure;
}

function chanceOfNone(mean: number, dispersion: number): number {
  return dispersion - 1 < LEAST_OVERDISPERSION
    ? Math.exp(-mean)
    : Math.exp((-mean / (dispersion - 1)) * Math.log(dispersion));
}

/** Where the chance of 0 is too small to climb from. */
function chanceNear(count: number, mean: number, dispersion: number): number {
  return dispersion - 1 < LEAST_OVERDISPERSION
    ? poissonProbability(count, mean)
    : negativeBinomialProbability(count, mean / (dispersion - 1), 1 / dispersion);
}

/**
 * The chances of 0, 1, 2, … with a negative binomial (or, with dispersion 1, Poisson) distribution, up to where less than
 * 1e-12 is left. By the ratio of neighbours, since `1 − cdf` cancels in the tail.
 *
 * @param mean at least 0
 * @param dispersion variance over mean, at least 1
 */
export function negativeBinomialProbabilities(mean: number, dispersion: number): number[] {
  if (!(mean > 0)) return [1];
  const ratio = ratioOfNeighbours(mean, dispersion);
  const atZero = chanceOfNone(mean, dispersion);
  const start = atZero > SMALLEST_START ? 0 : Math.floor(mean);
  let probability = start === 0 ? atZero : chanceNear(start, mean, dispersion);
  const below: number[] = [];
  for (let count = start, lower = probability; count > 0; count--) {
    lower /= ratio(count - 1);
    below.push(lower);
  }
  const probabilities = [...below.reverse(), probability];
  for (let count = start; ; count++) {
    const next = ratio(count);
    // Ratios only fall from here, so what follows is less than a geometric series.
    if (next < 1 && (probability * next) / (1 - next) < TAIL) break;
    probability *= next;
    probabilities.push(probability);
  }
  return probabilities;
}

/** The chances of 0, 1, 2, … uses in so many periods, by one component alone. */
function componentProbabilities(component: CountComponent, periods: number): ArrayLike<number> {
  // Sums of independent negative binomials with one success probability are negative binomial again.
  return component.kind === 'negative binomial'
    ? negativeBinomialProbabilities(component.mean * periods, component.dispersion)
    : sumOfDraws(component.counts, periods);
}

/** The chance of one number of uses in so many periods, by one component alone. */
export function componentProbability(component: CountComponent, periods: number, count: number): number {
  if (component.kind === 'empirical') return chanceOfSum(component.counts, periods, count);
  const mean = component.mean * periods;
  if (!(mean > 0)) return count === 0 ? 1 : 0;
  const { dispersion } = component;
  const atZero = chanceOfNone(mean, dispersion);
  if (atZero < SMALLEST_START || count > LONGEST_CLIMB) return chanceNear(count, mean, dispersion);
  let chance = atZero;
  const ratio = ratioOfNeighbours(mean, dispersion);
  for (let below = 0; below < count; below++) chance *= ratio(below);
  return chance;
}

/**
 * The chances that the sum of so many periods is at most 0, 1, 2, …; the last is 1.
 *
 * @param components their weights add up to 1; one holds for all periods
 * @param periods whole, at least 0
 */
export function sumDistribution(components: readonly CountComponent[], periods: number): Float64Array {
  const parts = components.map((component) => componentProbabilities(component, periods));
  const cumulative = new Float64Array(Math.max(1, ...parts.map((part) => part.length)));
  for (const [index, part] of parts.entries()) {
    const weight = components[index]?.weight ?? 0;
    for (let count = 0; count < part.length; count++) {
      cumulative[count] = (cumulative[count] ?? 0) + weight * (part[count] ?? 0);
    }
  }
  let sum = 0;
  for (let count = 0; count < cumulative.length; count++) {
    sum = Math.min(1, sum + (cumulative[count] ?? 0));
    cumulative[count] = sum;
  }
  cumulative[cumulative.length - 1] = 1;
  return cumulative;
}

/** The smallest count whose cumulative probability reaches a level. */
export function quantileOf(cumulative: ArrayLike<number>, level: number): number {
  for (let count = 0; count < cumulative.length; count++) {
    if ((cumulative[count] ?? 1) >= level - ROUNDING) return count;
  }
  return Math.max(0, cumulative.length - 1);
}

/**
 * The smallest sum of so many periods that is enough with a probability.
 *
 * @param level 0 to 1; 1 gives the largest sum that is still told from impossible
 */
export function sumQuantile(components: readonly CountComponent[], periods: number, level: number): number {
  return quantileOf(sumDistribution(components, periods), level);
}

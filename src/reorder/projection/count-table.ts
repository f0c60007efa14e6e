import type { RandomNumbers } from './random-numbers.js';

const two32 = 0x1_0000_0000;
/** More uses in one period are not a studio's. */
const mostUses = 1_000_000;
/** Terms smaller than this share of the largest are left out: far below what 32 random bits can tell apart. */
const negligible = 1e-17;

/** Chances of the counts `from`, `from` + 1, and so on; they add up to 1. */
export interface CountChances {
  from: number;
  chances: Float64Array;
}

/**
 * Chances of a negative binomial by mean and dispersion (variance over mean, at least 1; 1 is Poisson), from the mode
 * outwards by the ratio of neighbours, so that nothing underflows and no tail cancels.
 *
 * @throws RangeError when mean or dispersion is no number within bounds
 */
export function negativeBinomialChances(mean: number, dispersion: number): CountChances {
  if (!(mean >= 0 && mean <= mostUses)) {
    throw new RangeError(`The mean of a count is ${mean}: 0 to ${mostUses} is allowed.`);
  }
  if (!(dispersion >= 1 && dispersion <= mostUses)) {
    throw new RangeError(`The dispersion of a count is ${dispersion}: 1 to ${mostUses} is allowed.`);
  }
  if (mean === 0) return { from: 0, chances: Float64Array.of(1) };
  const growth = (dispersion - 1) / dispersion;
  const start = mean / dispersion;
  return fromMode(Math.max(0, Math.floor(mean - (dispersion - 1))), (count) => {
    return (count * growth + start) / (count + 1);
  });
}

/** Chances of how many of `trials` come about when each does with the given chance. */
export function binomialChances(trials: number, chance: number): CountChances {
  if (!(Number.isInteger(trials) && trials >= 0 && trials <= mostUses)) {
    throw new RangeError(`A count is ${trials}: a whole number of 0 to ${mostUses} is allowed.`);
  }
  if (chance <= 0 || trials === 0) return { from: 0, chances: Float64Array.of(1) };
  if (chance >= 1) return { from: trials, chances: Float64Array.of(1) };
  const odds = chance / (1 - chance);
  const mode = Math.min(trials, Math.floor((trials + 1) * chance));
  return fromMode(mode, (count) => ((trials - count) * odds) / (count + 1));
}

/** @param ratio of the chance of count + 1 to that of count */
function fromMode(mode: number, ratio: (count: number) => number): CountChances {
  const below: number[] = [];
  for (let count = mode, term = 1; count > 0; count--) {
    term /= ratio(count - 1);
    if (term < negligible) break;
    below.push(term);
  }
  const terms = [...below.reverse(), 1];
  for (let count = mode, term = 1; ; count++) {
    term *= ratio(count);
    if (term < negligible) break;
    terms.push(term);
  }
  // The small ones first, so that they are not lost.
  const sum = [...terms].sort((one, other) => one - other).reduce((total, term) => total + term, 0);
  return { from: mode - below.length, chances: Float64Array.from(terms, (term) => term / sum) };
}

/** What a mixture of counts is, each as likely as its weight says. */
export function mixedChances(parts: readonly { weight: number; counts: CountChances }[]): CountChances {
  const from = Math.min(...parts.map(({ counts }) => counts.from));
  const end = Math.max(...parts.map(({ counts }) => counts.from + counts.chances.length));
  const whole = parts.reduce((sum, { weight }) => sum + weight, 0);
  const chances = new Float64Array(end - from);
  for (const { weight, counts } of parts) {
    counts.chances.forEach((chance, index) => {
      const at = counts.from - from + index;
      chances[at] = (chances[at] ?? 0) + (weight / whole) * chance;
    });
  }
  return { from, chances };
}

/**
 * Draws counts by inversion, so that more luck is never less use, with a guide to where to begin (Chen & Asau 1974,
 * AIIE Trans. 6:163–166 [M]).
 */
export class CountTable {
  private readonly from: number;
  /** Of each count: the chance of it or less, times 2³². */
  private readonly upTo: Float64Array;
  private readonly guide: Int32Array;
  private readonly shift: number;

  constructor({ from, chances }: CountChances) {
    this.from = from;
    this.upTo = new Float64Array(chances.length);
    let sum = 0;
    chances.forEach((chance, index) => {
      sum += chance;
      this.upTo[index] = sum * two32;
    });
    this.upTo[chances.length - 1] = two32;
    const bits = Math.min(12, Math.max(1, 32 - Math.clz32(chances.length)));
    this.shift = 32 - bits;
    this.guide = new Int32Array(1 << bits);
    for (let entry = 0, index = 0; entry < this.guide.length; entry++) {
      while ((this.upTo[index] as number) <= entry * 2 ** this.shift) index++;
      this.guide[entry] = index;
    }
  }

  draw(random: RandomNumbers): number {
    const luck = random.next();
    let index = this.guide[luck >>> this.shift] as number;
    while ((this.upTo[index] as number) <= luck) index++;
    return this.from + index;
  }
}

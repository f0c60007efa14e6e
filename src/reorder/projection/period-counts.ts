import type { RandomNumbers } from './random-numbers.js';

const two32 = 0x1_0000_0000;
/** More uses in one period are not a studio's. */
const mostUses = 1_000_000;
const mostDispersion = 10_000;
/** Terms smaller than this share of the largest are left out: far below what 32 random bits can tell apart. */
const negligible = 1e-17;
/** From here on it pays to jump over empty periods. */
const likelyEmpty = 0.75;

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
  if (!(dispersion >= 1 && dispersion <= mostDispersion)) {
    throw new RangeError(`The dispersion of a count is ${dispersion}: 1 to ${mostDispersion} is allowed.`);
  }
  if (mean === 0) return { from: 0, chances: Float64Array.of(1) };
  const growth = (dispersion - 1) / dispersion;
  const start = mean / dispersion;
  return fromMode(Math.max(0, Math.floor(mean - (dispersion - 1))), (count) => {
    return (count * growth + start) / (count + 1);
  });
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

/**
 * Chances of a sample's counts, each member as likely.
 *
 * @throws RangeError when there is none, or one is no whole number within bounds
 */
export function sampleChances(counts: readonly number[]): CountChances {
  if (counts.length === 0) throw new RangeError('A sample has no counts: at least one is needed.');
  for (const count of counts) {
    if (!(Number.isInteger(count) && count >= 0 && count <= mostUses)) {
      throw new RangeError(`A count is ${count}: a whole number of 0 to ${mostUses} is allowed.`);
    }
  }
  const from = Math.min(...counts);
  const chances = new Float64Array(Math.max(...counts) - from + 1);
  for (const count of counts) chances[count - from] = (chances[count - from] as number) + 1 / counts.length;
  return { from, chances };
}

/**
 * Draws counts of one period after another by inversion, so that more luck is never less use, with a guide to where to
 * begin (Chen & Asau 1974, AIIE Trans. 6:163–166 [M]). When most periods are empty, their number until the next that is
 * not is drawn at once: it is geometric.
 */
export class PeriodCounts {
  private readonly from: number;
  /** Of each count: the chance of it or less, times 2³². */
  private readonly upTo: Float64Array;
  private readonly guide: Int32Array;
  private readonly shift: number;
  /** One over the logarithm of the chance of an empty period; 0 when they are drawn like any other. */
  private readonly jump: number;

  constructor({ from, chances }: CountChances) {
    const empty = from === 0 ? (chances[0] as number) : 0;
    const jumps = empty >= likelyEmpty;
    // Of an empty chance of 1 every luck is to jump for ever.
    this.jump = jumps ? (empty < 1 ? 1 / Math.log(empty) : -Infinity) : 0;
    this.from = jumps ? 1 : from;
    const drawn = jumps ? chances.subarray(1) : chances;
    const whole = drawn.reduce((sum, chance) => sum + chance, 0);
    let sum = 0;
    this.upTo = Float64Array.from(drawn, (chance) => {
      sum += chance;
      return (sum / whole) * two32;
    });
    this.upTo[drawn.length - 1] = two32;
    const bits = Math.min(12, Math.max(1, 32 - Math.clz32(drawn.length)));
    this.shift = 32 - bits;
    this.guide = new Int32Array(1 << bits);
    for (let entry = 0, index = 0; entry < this.guide.length; entry++) {
      while ((this.upTo[index] as number) <= entry * 2 ** this.shift) index++;
      this.guide[entry] = index;
    }
  }

  /** Periods to pass over because they are empty; Infinity when all are. */
  emptyPeriods(random: RandomNumbers): number {
    if (this.jump === 0) return 0;
    return Math.floor(Math.log((random.next() + 0.5) / two32) * this.jump);
  }

  /** Uses of the period after those. */
  uses(random: RandomNumbers): number {
    const luck = random.next();
    let index = this.guide[luck >>> this.shift] as number;
    while ((this.upTo[index] as number) <= luck) index++;
    return this.from + index;
  }
}

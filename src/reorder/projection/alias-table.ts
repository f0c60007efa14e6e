import type { RandomNumbers } from './random-numbers.js';

const two32 = 0x1_0000_0000;

/**
 * Draws one of n things by weight in the same time whatever n is: the alias method of Walker 1977 as made by Vose 1991,
 * IEEE Trans. Softw. Eng. 17:972–975 [M].
 */
export class AliasTable {
  private readonly kept: Float64Array;
  private readonly alias: Int32Array;
  /** The only one that has weight, which takes no luck; −1 when there are several. */
  private readonly only: number;

  /** @throws RangeError when there are no weights, one is negative or no number, or all are 0 */
  constructor(weights: ArrayLike<number>) {
    const count = weights.length;
    let sum = 0;
    for (let index = 0; index < count; index++) {
      const weight = weights[index] ?? 0;
      if (!(weight >= 0)) throw new RangeError(`A weight is ${weight}: at least 0 is allowed.`);
      sum += weight;
    }
    if (!(sum > 0 && sum < Infinity)) {
      throw new RangeError(`The weights add up to ${sum}: more than 0 is needed to draw one.`);
    }
    const first = Array.prototype.findIndex.call(weights, (weight) => weight > 0);
    this.only = weights[first] === sum ? first : -1;
    this.kept = new Float64Array(count);
    this.alias = new Int32Array(count);
    const scaled = Float64Array.from(weights, (weight) => (weight * count) / sum);
    const small: number[] = [];
    const large: number[] = [];
    scaled.forEach((share, index) => {
      (share < 1 ? small : large).push(index);
    });
    for (;;) {
      const less = small.pop();
      const more = large.pop();
      if (less === undefined || more === undefined) {
        // What is left over is 1 but for rounding.
        for (const index of [less, more, ...small, ...large]) {
          if (index === undefined) continue;
          this.kept[index] = two32;
          this.alias[index] = index;
        }
        return;
      }
      const share = scaled[less] ?? 0;
      this.kept[less] = share * two32;
      this.alias[less] = more;
      const rest = (scaled[more] ?? 0) + share - 1;
      scaled[more] = rest;
      (rest < 1 ? small : large).push(more);
    }
  }

  draw(random: RandomNumbers): number {
    if (this.only >= 0) return this.only;
    const place = random.next() * this.alias.length;
    const index = Math.floor(place / two32);
    return place - index * two32 < (this.kept[index] as number) ? index : (this.alias[index] as number);
  }
}

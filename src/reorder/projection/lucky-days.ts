import type { DaysDistribution } from './item-facts.js';

/** How many days something takes, by luck: more luck is never fewer days. */
export class LuckyDays {
  readonly isCertain: boolean;
  readonly first: number;
  private readonly days: Int32Array;
  /** Of each: the chance of it or fewer days. */
  private readonly upTo: Float64Array;

  /** @throws RangeError when there are no weights, or one is negative or no number, or days are no whole numbers */
  constructor({ days, weights }: DaysDistribution) {
    const whole = weights.reduce((sum, weight) => sum + weight, 0);
    if (
      days.length !== weights.length ||
      !(whole > 0 && whole < Infinity) ||
      weights.some((weight) => weight < 0)
    ) {
      throw new RangeError(
        `${days.length} numbers of days have the weights ${weights.join(', ')}: each needs one, none below 0, not all 0.`,
      );
    }
    const wrong = days.find((each) => !Number.isInteger(each));
    if (wrong !== undefined) throw new RangeError(`It takes ${wrong} days: a whole number is needed.`);
    const byDays = days
      .map((each, index) => ({ days: each, weight: weights[index] ?? 0 }))
      .filter(({ weight }) => weight > 0)
      .sort((one, other) => one.days - other.days);
    this.days = Int32Array.from(byDays, (each) => each.days);
    let sum = 0;
    this.upTo = Float64Array.from(byDays, ({ weight }) => {
      sum += weight / whole;
      return sum;
    });
    this.first = this.days[0] as number;
    this.isCertain = this.days[0] === this.days[this.days.length - 1];
  }

  /** @param luck from 0 up to, not including, 1 */
  by(luck: number): number {
    let index = 0;
    while (index < this.days.length - 1 && (this.upTo[index] as number) <= luck) index++;
    return this.days[index] as number;
  }
}

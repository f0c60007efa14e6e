import { seed } from './seed.js';

/** Numbers that look random and come again with the same seed. */
export class SeededRandom {
  private state: number;

  constructor(readonly seed: number) {
    this.state = seed >>> 0;
  }

  /** From the seed of this run. */
  static ofThisRun(): SeededRandom {
    return new SeededRandom(seed());
  }

  /** At least 0 and below 1 (mulberry32 [C]). */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let mixed = this.state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  /** A whole number from 0 to below `limit`. */
  below(limit: number): number {
    return Math.floor(this.next() * limit);
  }

  /** A whole number from `least` to `most`, both included. */
  between(least: number, most: number): number {
    return least + this.below(most - least + 1);
  }

  pick<Item>(items: readonly Item[]): Item {
    const item = items[this.below(items.length)];
    if (item === undefined) throw new Error('There is nothing to pick from.');
    return item;
  }

  /** `count` different ones, or all when there are fewer, in the order in which they stand in `all`. */
  pickSome<Item>(all: readonly Item[], count: number): Item[] {
    const places = new Set<number>();
    while (places.size < Math.min(count, all.length)) places.add(this.below(all.length));
    return all.filter((_, index) => places.has(index));
  }
}

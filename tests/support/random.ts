/** Numbers that look random and come again with the same seed. */
export class SeededRandom {
  private state: number;

  constructor(readonly seed: number) {
    this.state = seed >>> 0;
  }

  /** From `SEED` in the environment, else new each time. */
  static fromEnvironment(): SeededRandom {
    return new SeededRandom(Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31)));
  }

  /** At least 0 and below 1 (the generator known as mulberry32). */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let mixed = this.state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  /** A whole number from `least` to `most`, both included. */
  between(least: number, most: number): number {
    return least + Math.floor(this.next() * (most - least + 1));
  }

  pick<Item>(items: readonly Item[]): Item {
    const item = items[this.between(0, items.length - 1)];
    if (item === undefined) throw new Error('There is nothing to pick from.');
    return item;
  }
}

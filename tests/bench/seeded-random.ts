/** Random numbers that come out the same for the same seed (mulberry32 [C]). */
export class SeededRandom {
  constructor(private state: number) {}

  /** At least 0, below 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  }

  below(limit: number): number {
    return Math.floor(this.next() * limit);
  }

  /** `count` different ones, in the order in which they stand in `all`. */
  pick<Item>(all: readonly Item[], count: number): Item[] {
    const places = new Set<number>();
    while (places.size < Math.min(count, all.length)) places.add(this.below(all.length));
    return all.filter((_, index) => places.has(index));
  }
}

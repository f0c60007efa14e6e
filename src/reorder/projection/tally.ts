import type { Estimate } from './outcome.js';

/** Means and standard errors of several figures of many paths. */
export class Tally {
  private paths = 0;
  private readonly firsts: Float64Array;
  private readonly sums: Float64Array;
  private readonly squares: Float64Array;

  constructor(private readonly figures: number) {
    this.firsts = new Float64Array(figures);
    this.sums = new Float64Array(figures);
    this.squares = new Float64Array(figures);
  }

  start(): void {
    this.paths = 0;
    this.sums.fill(0);
    this.squares.fill(0);
  }

  add(figures: Float64Array): void {
    // Distances from the first path are summed: what hardly differs between paths would else drown in its own square.
    if (this.paths === 0) this.firsts.set(figures);
    this.paths++;
    for (let index = 0; index < this.figures; index++) {
      const distance = (figures[index] as number) - (this.firsts[index] as number);
      this.sums[index] = (this.sums[index] as number) + distance;
      this.squares[index] = (this.squares[index] as number) + distance * distance;
    }
  }

  /** @throws RangeError before any path */
  of(figure: number): Estimate {
    if (this.paths === 0) throw new RangeError('No path was counted: at least one is needed.');
    const distance = (this.sums[figure] as number) / this.paths;
    const squares = (this.squares[figure] as number) - this.paths * distance * distance;
    const variance = this.paths === 1 ? 0 : Math.max(0, squares) / (this.paths - 1);
    return {
      mean: (this.firsts[figure] as number) + distance,
      standardError: Math.sqrt(variance / this.paths),
    };
  }
}

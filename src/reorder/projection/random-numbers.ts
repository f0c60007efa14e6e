const two32 = 0x1_0000_0000;

/**
 * xoshiro128** of Blackman & Vigna, https://prng.di.unimi.it/xoshiro128starstar.c [S]: 32 random bits at a time. Its own
 * here, because each path and series has a stream of its own: pure-rand's generators are objects that are seeded with
 * one number as it stands, so neighbouring seeds begin alike.
 */
export class RandomNumbers {
  private first = 0;
  private second = 0;
  private third = 0;
  private fourth = 0;

  /** Begins the stream of one seed, path and purpose. */
  start(seed: number, path: number, stream: number): void {
    const from = mix(seed ^ mix(path + 0x9e37_79b9) ^ mix(stream + 0x7f4a_7c15));
    this.setState(from, mix(from + 0x9e37_79b9), mix(from + 0x3c6e_f372), mix(from + 0xdaa6_6d2b));
  }

  /** Four words of 32 bits, not all 0. */
  setState(first: number, second: number, third: number, fourth: number): void {
    this.first = first | 0;
    this.second = second | 0;
    this.third = third | 0;
    // All zeros would stay zeros.
    this.fourth = (first | second | third | fourth) === 0 ? 1 : fourth | 0;
  }

  /** Each whole number from 0 to 2³² − 1 is as likely. */
  next(): number {
    const times5 = Math.imul(this.second, 5);
    const result = Math.imul((times5 << 7) | (times5 >>> 25), 9) >>> 0;
    const shifted = this.second << 9;
    this.third ^= this.first;
    this.fourth ^= this.second;
    this.second ^= this.third;
    this.first ^= this.fourth;
    this.third ^= shifted;
    this.fourth = (this.fourth << 11) | (this.fourth >>> 21);
    return result;
  }
}

/** A number from 0 up to, not including, 1 that belongs to a seed, a path and an index, in whatever order they are asked for. */
export function numberOf(seed: number, path: number, index: number): number {
  return (mix(mix(seed ^ mix(path + 0x85eb_ca6b)) ^ mix(index + 0xc2b2_ae35)) >>> 0) / two32;
}

/** The finaliser of MurmurHash3 (Appleby; public domain) [M]: each bit of what goes in sways each bit that comes out. */
export function mix(word: number): number {
  let mixed = word | 0;
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85eb_ca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2_ae35);
  return mixed ^ (mixed >>> 16);
}

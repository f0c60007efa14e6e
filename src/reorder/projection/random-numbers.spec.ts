import { describe, expect, it } from 'vitest';
import { mix, numberOf, RandomNumbers } from './random-numbers.js';

describe('random numbers', () => {
  it('are those of the reference code of xoshiro128**, as others ran it', () => {
    // State and numbers computed with the C code of Blackman & Vigna in the tests of edorfaus/xoshiro-6502 [S].
    const random = new RandomNumbers();
    random.setState(0x964d_4a0c, 0xd40a_b895, 0xad7f_decb, 0x3006_f0f0);
    expect([random.next(), random.next(), random.next(), random.next()]).toEqual([
      0xf139_1922, 0x6fe5_3806, 0xa5be_2840, 0xf510_ee70,
    ]);
  });

  it('go on when a state is all zeros', () => {
    const random = new RandomNumbers();
    random.setState(0, 0, 0, 0);
    expect(Array.from({ length: 8 }, () => random.next()).some((number) => number > 0)).toBe(true);
  });

  it('begin anew for each seed, path and stream, and again for the same', () => {
    const random = new RandomNumbers();
    const begun = (seed: number, path: number, stream: number): number => {
      random.start(seed, path, stream);
      return random.next();
    };
    const seen = new Set<number>();
    for (let seed = 0; seed < 4; seed++) {
      for (let path = 0; path < 50; path++)
        for (let stream = 0; stream < 4; stream++) seen.add(begun(seed, path, stream));
    }
    expect(seen.size).toBeGreaterThan(798);
    expect(begun(1, 2, 3)).toBe(begun(1, 2, 3));
  });

  it('of neighbouring paths and indices are spread evenly and have nothing to do with each other', () => {
    // 40,000 numbers in 64 fields of two neighbours: chi square with 63 degrees of freedom, 4 deviations allowed.
    for (const draw of [
      (path: number) => [numberOf(7, path, 0), numberOf(7, path + 1, 0)],
      (index: number) => [numberOf(7, 3, index - 20_000), numberOf(7, 3, index - 19_999)],
      (path: number) => [numberOf(7, path, 5), numberOf(8, path, 5)],
      (path: number) => {
        const random = new RandomNumbers();
        random.start(7, path, 1);
        const first = random.next();
        random.start(7, path, 2);
        return [first / 2 ** 32, random.next() / 2 ** 32];
      },
    ]) {
      const fields = new Int32Array(64);
      const draws = 40_000;
      for (let index = 0; index < draws; index++) {
        const [one = 0, other = 0] = draw(index);
        const field = Math.floor(one * 8) * 8 + Math.floor(other * 8);
        fields[field] = (fields[field] ?? 0) + 1;
      }
      const expected = draws / 64;
      const chiSquare = fields.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
      expect(chiSquare).toBeLessThan(63 + 4 * Math.sqrt(2 * 63));
      expect(chiSquare).toBeGreaterThan(63 - 4 * Math.sqrt(2 * 63));
    }
  });

  it('mix by the finaliser of MurmurHash3', () => {
    // Of the words 1 and 2 by the published steps, worked out with whole numbers of any size.
    const byHand = (word: bigint): number => {
      const cut = 0xffff_ffffn;
      let mixed = word;
      mixed = ((mixed ^ (mixed >> 16n)) * 0x85eb_ca6bn) & cut;
      mixed = ((mixed ^ (mixed >> 13n)) * 0xc2b2_ae35n) & cut;
      return Number(mixed ^ (mixed >> 16n));
    };
    for (const word of [1, 2, 0x7fff_ffff, 0xdead_beef]) expect(mix(word) >>> 0).toBe(byHand(BigInt(word)));
  });
});

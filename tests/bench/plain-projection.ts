/**
 * The least that can walk one item through many courses of events: a loop over days and lots on typed arrays, Poisson
 * needs by inversion from xoshiro128**, first expired first, no orders. Written for itself, with nothing of the service.
 */
export interface PlainCase {
  paths: number;
  days: number;
  /** Poisson mean of a day. */
  mean: number;
  /** By rising last day. */
  lotUnits: readonly number[];
  lotLastDays: readonly number[];
}

export interface PlainResult {
  wastedUnits: number;
  unmetUnits: number;
}

/** @returns means of a path */
export function walkPlainLoop(
  { paths, days, mean, lotUnits, lotLastDays }: PlainCase,
  seed: number,
): PlainResult {
  const lots = lotUnits.length;
  const start = Int32Array.from(lotUnits);
  const lastDays = Int32Array.from(lotLastDays);
  const left = new Int32Array(lots);
  const upTo = poissonUpTo(mean);
  let first = seed | 1;
  let second = 0x9e37_79b9 | 0;
  let third = 0x243f_6a88 | 0;
  let fourth = 0xb7e1_5162 | 0;
  let wasted = 0;
  let unmet = 0;
  for (let path = 0; path < paths; path++) {
    left.set(start);
    let head = 0;
    for (let day = 0; day < days; day++) {
      const times5 = Math.imul(second, 5);
      const luck = Math.imul((times5 << 7) | (times5 >>> 25), 9) >>> 0;
      const shifted = second << 9;
      third ^= first;
      fourth ^= second;
      second ^= third;
      first ^= fourth;
      third ^= shifted;
      fourth = (fourth << 11) | (fourth >>> 21);
      let need = 0;
      while (luck >= (upTo[need] as number)) need++;
      while (need > 0 && head < lots) {
        const there = left[head] as number;
        const taken = Math.min(there, need);
        left[head] = there - taken;
        need -= taken;
        if (there === taken) head++;
      }
      unmet += need;
      while (head < lots && (lastDays[head] as number) <= day) {
        wasted += left[head] as number;
        head++;
      }
    }
  }
  return { wastedUnits: wasted / paths, unmetUnits: unmet / paths };
}

/** Of each count: the chance of it or less, times 2³². */
function poissonUpTo(mean: number): Float64Array {
  const upTo: number[] = [];
  let chance = Math.exp(-mean);
  let sum = chance;
  for (let count = 1; chance > 1e-12; count++) {
    upTo.push(sum * 2 ** 32);
    chance *= mean / count;
    sum += chance;
  }
  return Float64Array.of(...upTo, 2 ** 32);
}

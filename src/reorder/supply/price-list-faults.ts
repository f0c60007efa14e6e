import type { PackPrice } from './pack-price.js';

/**
 * What is wrong with a list of prices; empty: nothing. The first price holds from the smallest order on, every further one
 * from more packs, and none is above the one before: a pack that costs more when more are ordered is a slip of the pen.
 */
export function priceListFaults(
  prices: readonly PackPrice[],
  minimumPacks: number,
): { field: string; message: string }[] {
  const faults: { field: string; message: string }[] = [];
  for (const [index, { fromPacks, packPriceMinor }] of prices.entries()) {
    const before = prices[index - 1];
    if (before === undefined) {
      if (fromPacks !== minimumPacks) {
        faults.push({
          field: `prices.${index}.fromPacks`,
          message: `the first price holds from ${fromPacks} packs on, but the smallest order is ${minimumPacks}; the two must be equal`,
        });
      }
      continue;
    }
    if (fromPacks <= before.fromPacks) {
      faults.push({
        field: `prices.${index}.fromPacks`,
        message: `a price from ${fromPacks} packs on stands after one from ${before.fromPacks}; write them by rising number of packs, each number once`,
      });
    }
    if (packPriceMinor > before.packPriceMinor) {
      faults.push({
        field: `prices.${index}.packPriceMinor`,
        message: `a pack would cost more from ${fromPacks} packs on than from ${before.fromPacks}; compare the two prices with the offer`,
      });
    }
  }
  return faults;
}

import type { PackPrice } from './pack-price.js';

/**
 * What one pack costs when so many are ordered: all of them cost what the highest break reached says. Below the first break
 * its price counts.
 *
 * @param prices at least one, by rising number of packs
 */
export function packPriceMinor(prices: readonly PackPrice[], packs: number): number {
  let price = prices[0]?.packPriceMinor;
  for (const each of prices) if (each.fromPacks <= packs) price = each.packPriceMinor;
  if (price === undefined) throw new RangeError('A price list holds at least one price.');
  return price;
}

/** What so many packs cost, in whole minor units; nothing when none are ordered. */
export function packsCostMinor(prices: readonly PackPrice[], packs: number): number {
  return packs === 0 ? 0 : packPriceMinor(prices, packs) * packs;
}

/**
 * What one unit costs when so many packs are ordered, in minor units, not rounded.
 *
 * @param unitsEach pieces or microlitres in a pack, at least 1
 */
export function unitPriceMinor(prices: readonly PackPrice[], packs: number, unitsEach: number): number {
  return packPriceMinor(prices, packs) / unitsEach;
}

import type { DemandFacts, ItemDemandFacts } from '../demand/demand-facts.js';
import { demandOfItem, studioDemand } from '../demand/demand-of-item.js';
import { drawDemand, seedOfItem } from '../projection/demand-draws.js';
import type { Foretold } from './calibration.js';
import { factsAsOf, itemFactsAsOf } from './facts-as-of.js';

export interface PastForecastSettings {
  /** Days whose need was to be foretold. */
  horizonDays: number;
  /** How many times, at most: every so many days, not overlapping, the last of them ending the day before the plan. */
  mostOrigins: number;
  levels: readonly number[];
  paths: number;
  seed: number;
}

/** The record must be so old for anything to be foretold from it. */
const FEWEST_DAYS_OF_RECORD = 90;

/**
 * Foretells what items needed, again and again in the past, each time from what was known that morning, and sets beside it
 * what came: sessions, refused or not, and other uses.
 *
 * @param asOf what was known of an item on a morning
 */
export function pastForecasts(
  facts: DemandFacts,
  items: readonly ItemDemandFacts[],
  { horizonDays, mostOrigins, levels, paths, seed }: PastForecastSettings,
  asOf: (item: ItemDemandFacts, day: number) => ItemDemandFacts = itemFactsAsOf,
): Foretold[] {
  const foretold: Foretold[] = [];
  for (let back = 1; back <= mostOrigins; back++) {
    const day = -back * horizonDays;
    if (day - facts.recordedFrom < FEWEST_DAYS_OF_RECORD) break;
    const studio = studioDemand({ ...factsAsOf(facts, day), days: horizonDays });
    const came = unitsBetween(facts, day, day + horizonDays);
    for (const item of items) {
      if (item.availableFrom !== null && item.availableFrom >= day) continue;
      const { model, description } = demandOfItem(studio, asOf(item, day), horizonDays);
      const draws = drawDemand(model, { paths, seed: seedOfItem(seed + back, item.item) });
      const sums = sumsOfPaths(draws.offsets, draws.eventUnits);
      const { units, unknown } = came.get(item.item) ?? { units: 0, unknown: 0 };
      const others = item.otherUses.filter((use) => use.day >= day && use.day < day + horizonDays);
      // A use of unknown amount is taken for a usual one: it was a need.
      const needed = others.reduce((sum, use) => sum + use.amount, units + unknown * description.unitsOfUse);
      for (const level of levels) {
        const quantity = sums[Math.max(0, Math.ceil(level * sums.length - 1e-9) - 1)] ?? 0;
        const claimed = sums.filter((sum) => sum <= quantity).length / sums.length;
        foretold.push({ level, foretold: quantity, claimed, came: needed });
      }
    }
  }
  return foretold;
}

/** The sums of all paths, the smallest first. */
function sumsOfPaths(offsets: Int32Array, units: Int32Array): Float64Array {
  const sums = new Float64Array(Math.max(0, offsets.length - 1));
  for (let path = 0; path < sums.length; path++) {
    let sum = 0;
    for (let event = offsets[path] ?? 0; event < (offsets[path + 1] ?? 0); event++) sum += units[event] ?? 0;
    sums[path] = sum;
  }
  return sums.sort();
}

function unitsBetween(
  facts: DemandFacts,
  from: number,
  to: number,
): Map<string, { units: number; unknown: number }> {
  const byItem = new Map<string, { units: number; unknown: number }>();
  for (const { day, uses } of facts.sessions) {
    if (day < from || day >= to) continue;
    for (const { item, amount } of uses) {
      const known = byItem.get(item) ?? { units: 0, unknown: 0 };
      if (amount === null) known.unknown++;
      else known.units += amount;
      byItem.set(item, known);
    }
  }
  for (const { item, day } of facts.unmetWants) {
    if (day < from || day >= to) continue;
    const known = byItem.get(item) ?? { units: 0, unknown: 0 };
    known.unknown++;
    byItem.set(item, known);
  }
  return byItem;
}

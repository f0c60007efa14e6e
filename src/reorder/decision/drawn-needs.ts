import type { DemandDraws } from '../projection/demand-draws.js';
import type { DaysDistribution } from '../projection/item-facts.js';
import { daysWithin } from '../supply/lead-time.js';

/** Fractional parts of its multiples lie evenly between 0 and 1. */
const goldenRatio = 0.618_033_988_749_894_9;

/** Windows laid over the days to come, at most: neighbouring ones say much the same. */
const mostWindows = 8;

/**
 * What is needed over some days, on each path and from several days on, by rising amount. The days last as long as a
 * lead time and `extraDays`, every length as often as it is likely.
 *
 * @param untilDay windows begin before this day; those that reach beyond the drawn days are left out, unless all do
 */
export function needsOverLeadTime(
  draws: DemandDraws,
  leadTime: DaysDistribution,
  extraDays: number,
  untilDay: number,
  paths: number = draws.paths,
): Float64Array {
  const longest = daysWithin(leadTime, 1) + extraDays;
  const starts = windowStarts(Math.min(untilDay, draws.days), longest, draws.days);
  const lengths = leadTimesInTurn(leadTime, paths);
  const needs = new Float64Array(starts.length * paths);
  let filled = 0;
  for (let path = 0; path < paths; path++) {
    const length = (lengths[path] ?? 0) + extraDays;
    let from = draws.offsets[path] ?? 0;
    const end = draws.offsets[path + 1] ?? 0;
    for (const start of starts) {
      while (from < end && (draws.eventDays[from] ?? 0) < start) from++;
      let units = 0;
      for (let index = from; index < end && (draws.eventDays[index] ?? 0) < start + length; index++) {
        units += draws.eventUnits[index] ?? 0;
      }
      needs[filled++] = units;
    }
  }
  return needs.sort();
}

/** What is needed over a fixed number of days from day 0, on each path, by rising amount. */
export function needsOverDays(draws: DemandDraws, days: number, paths: number = draws.paths): Float64Array {
  const needs = new Float64Array(paths);
  for (let path = 0; path < paths; path++) needs[path] = needBefore(draws, path, days);
  return needs.sort();
}

/** The smallest of the amounts that is enough with the given chance. */
export function quantileOf(sorted: Float64Array, chance: number): number {
  if (sorted.length === 0) return 0;
  const rank = Math.ceil(chance * sorted.length - 1e-9);
  return sorted[Math.min(Math.max(rank, 1), sorted.length) - 1] ?? 0;
}

/** The share of amounts below the given one. */
export function shareBelow(sorted: Float64Array, amount: number): number {
  if (sorted.length === 0) return 0;
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? 0) < amount) low = middle + 1;
    else high = middle;
  }
  return low / sorted.length;
}

/** Mean need of a day over all drawn days. */
export function meanNeedPerDay(draws: DemandDraws): number {
  if (draws.paths === 0 || draws.days === 0) return 0;
  let units = 0;
  const end = draws.offsets[draws.paths] ?? 0;
  for (let index = 0; index < end; index++) units += draws.eventUnits[index] ?? 0;
  return units / draws.paths / draws.days;
}

function needBefore(draws: DemandDraws, path: number, day: number): number {
  let units = 0;
  const end = draws.offsets[path + 1] ?? 0;
  for (let index = draws.offsets[path] ?? 0; index < end; index++) {
    if ((draws.eventDays[index] ?? 0) >= day) break;
    units += draws.eventUnits[index] ?? 0;
  }
  return units;
}

function windowStarts(untilDay: number, length: number, days: number): number[] {
  const last = Math.min(untilDay - 1, days - length);
  if (last <= 0) return [0];
  const step = Math.max(1, Math.ceil(Math.max(length / 2, last / (mostWindows - 1))));
  const starts: number[] = [];
  for (let start = 0; start <= last; start += step) starts.push(start);
  return starts;
}

/** One lead time a path, spread evenly over the distribution and over the paths. */
function leadTimesInTurn(leadTime: DaysDistribution, paths: number): Int32Array {
  const lengths = new Int32Array(paths);
  for (let path = 0; path < paths; path++) {
    lengths[path] = daysWithin(leadTime, (((path + 0.5) * goldenRatio) % 1) + 1e-12);
  }
  return lengths;
}

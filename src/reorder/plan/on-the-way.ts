import type { DaysDistribution } from '../projection/item-facts.js';
import { daysWithin } from '../supply/lead-time.js';

/** An order that is not here yet; days count from the day of the plan. */
export interface PlacedOrder {
  /** When it was sent, or when the part of it came that came last; at most 0. */
  since: number;
  /** When it comes, as a person wrote; null: nobody did. */
  saidOn: number | null;
}

export interface ExpectedOrder {
  /** Null: it is so late that it is not counted on any more. */
  arrival: DaysDistribution | null;
  /** Later than any such order was. */
  overdue: boolean;
}

/** By when four of five orders are here: what is written as the day of an order by itself. */
const SHARE_WRITTEN = 0.8;
/** What is late by so many times the days within which 95 % are here is taken for lost. An assumption, no source [C]. */
const LOST_AFTER_TIMES = 2;
/** Of an order that is at once here otherwise, too, a word is waited for. */
const LOST_AFTER_AT_LEAST_DAYS = 14;

/**
 * When an order that is on its way arrives: as such orders do, given that it has not come so far. Where a person wrote the
 * day, the distribution is moved so that its middle falls on it. One that is later than any order ever was is taken to come
 * after half as many days again as are usual, at least one, and in the end to be lost.
 */
export function arrivalOfOrder({ since, saidOn }: PlacedOrder, leadTime: DaysDistribution): ExpectedOrder {
  const middle = daysWithin(leadTime, 0.5);
  const moved = saidOn === null ? since : saidOn - middle;
  const days: number[] = [];
  const weights: number[] = [];
  let total = 0;
  for (const [index, each] of leadTime.days.entries()) {
    const day = moved + each;
    const weight = leadTime.weights[index] ?? 0;
    if (day < 0 || weight <= 0) continue;
    days.push(day);
    weights.push(weight);
    total += weight;
  }
  if (total > 0)
    return { arrival: { days, weights: weights.map((weight) => weight / total) }, overdue: false };
  const patience = Math.max(LOST_AFTER_AT_LEAST_DAYS, LOST_AFTER_TIMES * daysWithin(leadTime, 0.95));
  if (-moved > patience) return { arrival: null, overdue: true };
  return { arrival: { days: [Math.max(1, Math.ceil(middle / 2))], weights: [1] }, overdue: true };
}

/**
 * Whether a day that stands beside an order is none that a person wrote, but the one that the lead times give by themselves.
 *
 * @param sentOn and @param expectedOn in days from the day of the plan
 * @param leadTimes that its lines may have
 */
export function isDayByLeadTime(
  sentOn: number,
  expectedOn: number,
  leadTimes: readonly DaysDistribution[],
): boolean {
  return leadTimes.some((leadTime) => sentOn + daysWithin(leadTime, SHARE_WRITTEN) === expectedOn);
}

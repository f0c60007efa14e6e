import { Temporal } from 'temporal-polyfill';
import { daysWithin, type LeadTime } from '../supply/lead-time.js';

export interface ExpectedArrival {
  /** YYYY-MM-DD, the last day on which it is in time. */
  expectedOn: string;
  basis: 'said by a person' | LeadTime['basis'];
}

/** An order is late when four of five would have come. */
const SHARE_IN_TIME = 0.8;

/**
 * By when an order is expected: on the day a person wrote, else when four of five such orders have come, by the slowest of
 * its lines.
 *
 * @param sentOn the studio's local day, ISO `YYYY-MM-DD`
 * @param saidOn the day a person wrote; null: none
 * @param leadTimes of its lines, at least one
 */
export function expectedArrival(
  sentOn: string,
  saidOn: string | null,
  leadTimes: readonly LeadTime[],
): ExpectedArrival {
  if (saidOn !== null) return { expectedOn: saidOn, basis: 'said by a person' };
  let longest: { days: number; basis: LeadTime['basis'] } | undefined;
  for (const { distribution, basis } of leadTimes) {
    const days = daysWithin(distribution, SHARE_IN_TIME);
    if (longest === undefined || days > longest.days) longest = { days, basis };
  }
  if (longest === undefined) throw new RangeError('The lead time of at least one line is needed.');
  const expectedOn = Temporal.PlainDate.from(sentOn).add({ days: longest.days }).toString();
  return { expectedOn, basis: longest.basis };
}

/** The day on which something is expected. */
export interface ExpectedDay {
  /** YYYY-MM-DD. */
  expectedOn: string;
  /** 1: a person named it; 0: it follows from the lead time; null: of a time when nobody noted that. */
  daySaid: 0 | 1 | null;
}

/**
 * By when the rest of an order is expected after a part of it came: on the day that was expected before, when that still
 * lies ahead; else as long after this arrival as such an order takes.
 */
export function expectedRest(
  arrivedOn: string,
  before: ExpectedDay | null,
  leadTimes: readonly LeadTime[],
): ExpectedDay {
  if (before !== null && before.expectedOn > arrivedOn) {
    return { expectedOn: before.expectedOn, daySaid: before.daySaid };
  }
  return { expectedOn: expectedArrival(arrivedOn, null, leadTimes).expectedOn, daySaid: 0 };
}

/** How an order is named in what is expected, and where something is wrong with it. */
export function orderReference(number: number): string {
  return `Order ${number}`;
}

import type { DaysDistribution } from '../projection/item-facts.js';
import { isDayByLeadTime } from './on-the-way.js';

/** What is on record of the day of an order. Days count from the day of the plan. */
export interface DayOfOrder {
  /** Null: nothing is expected, since it is not sent yet. */
  expectedOn: number | null;
  /** 1: a person named that day; 0: it follows from the lead time; null: of a time when nobody noted that. */
  daySaid: 0 | 1 | null;
  /** Somebody changed what is expected. */
  dayChanged: 0 | 1;
  sentAs: 'mail' | 'by hand' | null;
  /** The day that was written when it was mailed; null: none was. */
  saidInMail: number | null;
}

/**
 * The day of an order as a person wrote it; null: nobody did. Where it was not noted who wrote it, a day that the lead times
 * give by themselves is taken for theirs.
 *
 * @param since days from which the lead time may have been counted
 * @param leadTimes that its lines may have
 */
export function saidDay(
  { expectedOn, daySaid, dayChanged, sentAs, saidInMail }: DayOfOrder,
  since: readonly number[],
  leadTimes: readonly DaysDistribution[],
): number | null {
  if (expectedOn !== null && daySaid !== null) return daySaid === 1 ? expectedOn : null;
  if (dayChanged === 1) return expectedOn;
  if (sentAs !== 'by hand') return saidInMail;
  if (expectedOn === null || since.some((day) => isDayByLeadTime(day, expectedOn, leadTimes))) return null;
  return expectedOn;
}

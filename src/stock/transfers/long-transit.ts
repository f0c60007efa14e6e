import { Temporal } from 'temporal-polyfill';

/** Goods that are on their way for more days than these are missed at both ends. */
export const longestTransitDays = 14;

/**
 * Whether goods are on their way for too long.
 *
 * @param sentOn local day of sending, ISO `YYYY-MM-DD`
 * @param day the local day to judge it on
 */
export function isLongInTransit(sentOn: string, day: string): boolean {
  const { days } = Temporal.PlainDate.from(sentOn).until(day, { largestUnit: 'days' });
  return days > longestTransitDays;
}

import { Temporal } from 'temporal-polyfill';

/** What lies further off is a slip of the pen, in either direction. */
export const MOST_DAYS_AHEAD = 3650;
export const MOST_DAYS_PAST = 730;

/**
 * What is wrong with the last day of somebody who treats, in words that follow the name of the field; null: nothing. A day
 * that is over is allowed, for it may be written down late.
 *
 * @param leavesOn a calendar day, ISO `YYYY-MM-DD`
 * @param today the studio's local day
 */
export function leavingDayFault(leavesOn: string, today: string): string | null {
  const days = Temporal.PlainDate.from(today).until(leavesOn, { largestUnit: 'days' }).days;
  if (days > MOST_DAYS_AHEAD) {
    return `${leavesOn} lies more than ${MOST_DAYS_AHEAD} days ahead; check the year, or leave it out while no end is known`;
  }
  if (days < -MOST_DAYS_PAST) return `${leavesOn} lies more than ${MOST_DAYS_PAST} days back; check the year`;
  return null;
}

import { Temporal } from 'temporal-polyfill';

/** What is booked later than this is a slip of the pen. */
export const MOST_DAYS_AHEAD = 730;

/**
 * What is wrong with the day of a course, in words that follow the name of the field; null: nothing.
 *
 * @param heldOn a calendar day, ISO `YYYY-MM-DD`
 * @param today the studio's local day
 */
export function courseDayFault(heldOn: string, today: string): string | null {
  if (heldOn < today) {
    return `${heldOn} is over, today is ${today}; a course is planned for today or a later day`;
  }
  const last = Temporal.PlainDate.from(today).add({ days: MOST_DAYS_AHEAD }).toString();
  return heldOn > last ? `${heldOn} lies more than ${MOST_DAYS_AHEAD} days ahead; check the year` : null;
}

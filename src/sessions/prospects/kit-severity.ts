import { Temporal } from 'temporal-polyfill';

/** So many days ahead sessions are looked at; goods that are ordered then still come in time [C]. */
export const KIT_PROSPECT_DAYS = 14;
/** What is lacking today or tomorrow can only be fetched. */
const URGENT_DAYS = 1;
/** What is lacking within a week has to be ordered now. */
const SOON_DAYS = 7;

/**
 * How grave it is that the kit of a session cannot be filled.
 *
 * @param day the studio's local day of the session, ISO `YYYY-MM-DD`
 * @param today the studio's local day
 */
export function kitSeverity(day: string, today: string): 'notice' | 'warning' | 'urgent' {
  const { days } = Temporal.PlainDate.from(today).until(day, { largestUnit: 'days' });
  if (days <= URGENT_DAYS) return 'urgent';
  return days <= SOON_DAYS ? 'warning' : 'notice';
}

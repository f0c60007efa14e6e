import { Temporal } from 'temporal-polyfill';
import { localDay } from '../../../identity/local-day.js';

/**
 * An instant for something of which only the day is known: noon of that day where the studio is, or now when noon has not
 * come yet.
 * @param day YYYY-MM-DD
 * @param now ISO 8601 instant
 * @returns ISO 8601 instant, UTC
 */
export function dayInstant(day: string, timeZone: string, now: string): string {
  const noon = Temporal.PlainDate.from(day).toZonedDateTime({ timeZone, plainTime: '12:00' }).toInstant();
  const isAhead = Temporal.Instant.compare(noon, now) > 0;
  return (isAhead && day === localDay(now, timeZone) ? Temporal.Instant.from(now) : noon).toString({
    fractionalSecondDigits: 3,
  });
}

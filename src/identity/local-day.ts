import { Temporal } from 'temporal-polyfill';

const mostRemembered = 2_000;
const remembered = new Map<string, string>();

/**
 * The calendar day it is in the studio at an instant.
 *
 * @param instant ISO 8601 instant with `Z` or an offset, e.g. `2026-03-29T00:30:00Z`
 * @param timeZone IANA time zone of the studio, e.g. `Europe/Berlin`
 * @returns ISO `YYYY-MM-DD`
 * @throws RangeError when the instant or the time zone cannot be read: both are checked where they come in
 */
export function localDay(instant: string, timeZone: string): string {
  // Judging one tray asks for the same few instants again and again, and a time zone is slow to look up.
  const question = `${instant} ${timeZone}`;
  const known = remembered.get(question);
  if (known !== undefined) return known;
  const day = Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone).toPlainDate().toString();
  if (remembered.size >= mostRemembered) remembered.clear();
  remembered.set(question, day);
  return day;
}

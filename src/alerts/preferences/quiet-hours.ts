import { Temporal } from 'temporal-polyfill';

/** Local times, `HH:MM`. Quiet from the first until the second, across midnight when that is the earlier one. */
export interface QuietHours {
  from: string;
  until: string;
}

/**
 * When the quiet hours end in which an instant lies. Times that the clocks skip come as much later as they skip; of
 * those they show twice the first counts, so that nobody waits an hour longer than the clock on the wall says.
 *
 * @param at ISO 8601 instant
 * @param timeZone IANA time zone of the studio
 * @returns ISO 8601 instant in UTC with milliseconds; null: it is not quiet then
 * @throws RangeError when one of them cannot be read: all are checked where they come in
 */
export function endOfQuietHours(at: string, quiet: QuietHours, timeZone: string): string | null {
  const instant = Temporal.Instant.from(at);
  const [from, until] = [Temporal.PlainTime.from(quiet.from), Temporal.PlainTime.from(quiet.until)];
  const days = Temporal.PlainTime.compare(until, from) > 0 ? 0 : 1;
  const today = instant.toZonedDateTimeISO(timeZone).toPlainDate();
  const on = (day: Temporal.PlainDate, time: Temporal.PlainTime) =>
    day.toPlainDateTime(time).toZonedDateTime(timeZone, { disambiguation: 'compatible' }).toInstant();
  // Those that began yesterday may reach into today.
  for (const day of [today.subtract({ days: 1 }), today]) {
    const end = on(day.add({ days }), until);
    const isQuiet =
      Temporal.Instant.compare(on(day, from), instant) <= 0 && Temporal.Instant.compare(instant, end) < 0;
    if (isQuiet) return end.toString({ fractionalSecondDigits: 3 });
  }
  return null;
}

import { Temporal } from 'temporal-polyfill';

/**
 * The first time strictly after an instant at which it is morning in the studio: once on every local day, whatever the
 * clocks do. Where they skip the morning's time it comes as much later as they skip (02:30 becomes 03:30); where they
 * show it twice, the first time counts.
 *
 * @param after ISO 8601 instant
 * @param morning local time, `HH:MM`
 * @param timeZone IANA time zone of the studio
 * @returns ISO 8601 instant in UTC
 * @throws RangeError when one of them cannot be read: all are checked where they come in
 */
export function nextMorning(after: string, morning: string, timeZone: string): string {
  const instant = Temporal.Instant.from(after);
  const time = Temporal.PlainTime.from(morning);
  // A zone that moves across the date line skips a local day; its morning then falls onto the next one.
  for (let day = instant.toZonedDateTimeISO(timeZone).toPlainDate(); ; day = day.add({ days: 1 })) {
    const firing = day.toPlainDateTime(time).toZonedDateTime(timeZone, { disambiguation: 'compatible' });
    if (Temporal.Instant.compare(firing.toInstant(), instant) > 0) return firing.toInstant().toString();
  }
}

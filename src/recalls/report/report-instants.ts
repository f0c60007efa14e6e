import { Temporal } from 'temporal-polyfill';

/** An instant in a time zone, to the minute: `2026-03-01 10:30`; null: `–`. */
export function writtenInstant(instant: string | null, timeZone: string): string {
  if (instant === null) return '–';
  const local = Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone);
  return `${local.toPlainDate()} ${local.toPlainTime().toString({ smallestUnit: 'minute' })}`;
}

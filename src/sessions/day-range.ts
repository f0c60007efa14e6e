import { Temporal } from 'temporal-polyfill';

/** Instants, ISO 8601 in UTC with milliseconds: from the first, up to but without the second. */
export interface InstantRange {
  from: string;
  before: string;
}

/**
 * The instants of a range of the studio's local days, both days included; the days on which clocks change are an hour
 * shorter or longer.
 *
 * @param firstDay ISO `YYYY-MM-DD`
 * @param lastDay ISO `YYYY-MM-DD`, not before the first
 * @param timeZone IANA time zone of the studio
 * @returns null when a day does not exist in the calendar or the range runs backwards
 */
export function instantsOfDays(firstDay: string, lastDay: string, timeZone: string): InstantRange | null {
  const first = existingDay(firstDay);
  const last = existingDay(lastDay);
  if (first === null || last === null || Temporal.PlainDate.compare(first, last) > 0) return null;
  return { from: startOf(first, timeZone), before: startOf(last.add({ days: 1 }), timeZone) };
}

/** Instants are compared as text, and a year of more than four digits sorts below all others. */
const endOfTime = '9999-12-31T23:59:59.999Z';

function existingDay(day: string): Temporal.PlainDate | null {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day)) return null;
  try {
    return Temporal.PlainDate.from(day, { overflow: 'reject' });
  } catch {
    return null;
  }
}

function startOf(day: Temporal.PlainDate, timeZone: string): string {
  const start = day.toZonedDateTime(timeZone).toInstant().toString({ fractionalSecondDigits: 3 });
  return start.startsWith('+') ? endOfTime : start;
}

import { Temporal } from 'temporal-polyfill';

const mostYears = 1;

/**
 * When an alert that is put off until a day comes back: on the studio's morning of that day. It has to lie ahead, and at
 * most a year.
 *
 * @param day ISO `YYYY-MM-DD`
 * @param now ISO 8601 instant
 * @param morning local time, `HH:MM`
 * @param timeZone IANA time zone of the studio
 * @returns an instant in UTC with milliseconds, or what is wrong with the day
 */
export function putOffUntil(
  day: string,
  now: string,
  morning: string,
  timeZone: string,
): { until: string } | { fault: string } {
  const date = Temporal.PlainDate.from(day);
  const until = date
    .toPlainDateTime(Temporal.PlainTime.from(morning))
    .toZonedDateTime(timeZone, { disambiguation: 'compatible' })
    .toInstant();
  const today = Temporal.Instant.from(now).toZonedDateTimeISO(timeZone).toPlainDate();
  if (Temporal.Instant.compare(until, Temporal.Instant.from(now)) <= 0)
    return { fault: `The morning of ${day} is over; it is ${today} now. Choose a later day` };
  const last = today.add({ years: mostYears });
  if (Temporal.PlainDate.compare(date, last) > 0)
    return { fault: `${day} is more than a year ahead; ${last} is the last day to put it off until` };
  return { until: until.toString({ fractionalSecondDigits: 3 }) };
}

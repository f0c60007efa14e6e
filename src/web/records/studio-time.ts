import { Temporal } from 'temporal-polyfill';

/** What a time on the wall of the studio means: one instant, none, or two when the clocks are put back. */
export type StudioTime =
  | { kind: 'once'; instant: string }
  | { kind: 'never' }
  | {
      kind: 'twice';
      first: { instant: string; offset: string };
      second: { instant: string; offset: string };
    };

/**
 * The instants at which the clocks of the studio show a time.
 *
 * @param local `YYYY-MM-DDTHH:MM`, as a field for date and time gives it
 * @param timeZone IANA time zone of the studio
 * @returns null when it is no time at all, as while it is being typed. Instants in UTC with milliseconds
 */
export function studioTime(local: string, timeZone: string): StudioTime | null {
  const written = plainDateTime(local);
  if (written === null) return null;
  const first = written.toZonedDateTime(timeZone, { disambiguation: 'earlier' });
  const second = written.toZonedDateTime(timeZone, { disambiguation: 'later' });
  if (first.equals(second)) return { kind: 'once', instant: instantOf(first) };
  if (!first.toPlainDateTime().equals(written)) return { kind: 'never' };
  return {
    kind: 'twice',
    first: { instant: instantOf(first), offset: first.offset },
    second: { instant: instantOf(second), offset: second.offset },
  };
}

/** What the clocks of the studio show at an instant, `YYYY-MM-DDTHH:MM`. */
export function shownInStudio(instant: string, timeZone: string): string {
  return Temporal.Instant.from(instant)
    .toZonedDateTimeISO(timeZone)
    .toPlainDateTime()
    .toString({ smallestUnit: 'minute' });
}

function plainDateTime(local: string): Temporal.PlainDateTime | null {
  try {
    return Temporal.PlainDateTime.from(local, { overflow: 'reject' });
  } catch {
    return null;
  }
}

function instantOf(time: Temporal.ZonedDateTime): string {
  return time.toInstant().toString({ fractionalSecondDigits: 3 });
}

/** The instant at which a day begins in the studio. @param day `YYYY-MM-DD` */
export function startOfStudioDay(day: string, timeZone: string): string {
  return instantOf(Temporal.PlainDate.from(day).toZonedDateTime(timeZone));
}

/** @param day `YYYY-MM-DD` */
export function dayAfter(day: string): string {
  return Temporal.PlainDate.from(day).add({ days: 1 }).toString();
}

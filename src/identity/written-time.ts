import { Temporal } from 'temporal-polyfill';
import { otherOrderOfDate, readWrittenDay } from './written-day.js';

const shape = /^(\S+?)[T ]\s*(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?\s*(Z|[+-]\d{2}:\d{2})?$/;

export type WrittenTime = { instant: string } | { fault: string };

/**
 * A time as a person wrote it into a file: `2026-04-03 14:30` by the studio's clocks, or with `Z` or an offset. What the
 * clocks skip or show twice when they are changed is a fault that says what to write.
 *
 * @returns an instant in UTC with milliseconds, or what is wrong with it, in words that follow the name of its column
 */
export function readWrittenTime(text: string, timeZone: string): WrittenTime {
  const match = shape.exec(text);
  if (match === null) {
    const day = readWrittenDay(text);
    if ('day' in day) return { fault: `${text} has no time of day; write it as ${text} 14:30` };
    const other = otherOrderOfDate(text);
    return { fault: other ?? `"${text.slice(0, 40)}" is not a time; write it as 2026-04-03 14:30` };
  }
  const [, date = '', hour, minute, second = '0', offset] = match;
  const day = readWrittenDay(date);
  if ('fault' in day) return day;
  let local: Temporal.PlainDateTime;
  try {
    local = Temporal.PlainDate.from(day.day).toPlainDateTime(
      Temporal.PlainTime.from(
        { hour: Number(hour), minute: Number(minute), second: Number(second) },
        { overflow: 'reject' },
      ),
    );
  } catch {
    return { fault: `${text} is no time of a day; hours go from 00 to 23 and minutes to 59` };
  }
  if (offset !== undefined) return { instant: canonical(Temporal.Instant.from(`${local}${offset}`)) };
  const [earlier, later] = (['earlier', 'later'] as const).map((disambiguation) =>
    local.toZonedDateTime(timeZone, { disambiguation }),
  ) as [Temporal.ZonedDateTime, Temporal.ZonedDateTime];
  if (earlier.epochMilliseconds === later.epochMilliseconds)
    return { instant: canonical(earlier.toInstant()) };
  const written = `${day.day} ${local.toPlainTime().toString({ smallestUnit: 'minute' })}`;
  return {
    fault: earlier.toPlainDateTime().equals(local)
      ? `${written} comes twice that night, since the clocks of ${timeZone} are put back; write ${written}${earlier.offset} or ${written}${later.offset}, whichever is meant`
      : `${written} does not come that night, since the clocks of ${timeZone} are put forward; write another time`,
  };
}

/** As `readWrittenTime`, or a day alone, which is taken from its beginning. */
export function readWrittenDayOrTime(text: string, timeZone: string): WrittenTime {
  const day = readWrittenDay(text);
  return 'day' in day ? { instant: startOfDay(day.day, timeZone) } : readWrittenTime(text, timeZone);
}

/** The instant at which a day begins in the studio. @param day ISO `YYYY-MM-DD` */
export function startOfDay(day: string, timeZone: string): string {
  return canonical(Temporal.PlainDate.from(day).toZonedDateTime(timeZone).toInstant());
}

function canonical(instant: Temporal.Instant): string {
  return instant.toString({ fractionalSecondDigits: 3 });
}

import { Temporal } from 'temporal-polyfill';

/**
 * Dates in GS1 element strings: six digits YYMMDD.
 *
 * - The century is chosen so that the year lies from 49 years back to 50 years ahead of the year of reading
 *   (GS1 General Specifications 7.12) [P, by way of the dictionary's reference check].
 * - DD = 00 means the last day of the month where it is allowed (General Specifications 3.4.5) [S]: a month-only
 *   use-by date may be used until the month is over.
 * - A date that is not in the calendar is refused; it is never moved to the next month.
 */

/** A calendar date and how finely the label states it. `date` is YYYY-MM-DD. */
export type StatedDate = { readonly date: string; readonly precision: 'day' | 'month' };

export type DateReading =
  | ({ readonly ok: true } & StatedDate)
  | { readonly ok: false; readonly offset: number; readonly length: number; readonly allowed: string };

/** The full year of a two-digit year, read in `thisYear`. */
export function fullYear(twoDigitYear: number, thisYear: number): number {
  const century = thisYear - (thisYear % 100);
  const ahead = twoDigitYear - (thisYear % 100);
  if (ahead >= 51) return century - 100 + twoDigitYear;
  if (ahead <= -50) return century + 100 + twoDigitYear;
  return century + twoDigitYear;
}

/**
 * Reads YYMMDD. With `dayZero` 'month end', DD = 00 is the last day of the month.
 * A refusal names the place in the six digits and what may stand there.
 */
export function readDate(text: string, thisYear: number, dayZero: 'month end' | 'refused'): DateReading {
  if (!/^\d{6}$/.test(text)) return refusal(0, text.length, 'six digits, YYMMDD');
  return readCalendarDate(fullYear(Number(text.slice(0, 2)), thisYear), text.slice(2), 2, dayZero);
}

/** Reads YYYYMMDD, in which the day is always given. */
export function readDateWithCentury(text: string): DateReading {
  if (!/^\d{8}$/.test(text)) return refusal(0, text.length, 'eight digits, YYYYMMDD');
  return readCalendarDate(Number(text.slice(0, 4)), text.slice(4), 4, 'refused');
}

/**
 * Writes a date as YYMMDD; a month-only date gets the day 00. Undefined for a year the six digits could not
 * say: read back in `thisYear` it would be another century.
 */
export function printDate(stated: StatedDate, thisYear: number): string | undefined {
  const date = Temporal.PlainDate.from(stated.date);
  if (fullYear(date.year % 100, thisYear) !== date.year) return undefined;
  return yearMonthDay(date, stated.precision);
}

function yearMonthDay(date: Temporal.PlainDate, precision: StatedDate['precision']): string {
  const [year, month, day] = [date.year % 100, date.month, precision === 'month' ? 0 : date.day];
  return [year, month, day].map((part) => String(part).padStart(2, '0')).join('');
}

function readCalendarDate(
  year: number,
  monthAndDay: string,
  offset: number,
  dayZero: 'month end' | 'refused',
): DateReading {
  const month = Number(monthAndDay.slice(0, 2));
  const day = Number(monthAndDay.slice(2));
  if (month < 1 || month > 12) return refusal(offset, 2, 'a month 01 to 12');
  const { daysInMonth } = Temporal.PlainYearMonth.from({ year, month });
  if (day === 0 && dayZero === 'month end') {
    const date = Temporal.PlainDate.from({ year, month, day: daysInMonth });
    return { ok: true, date: date.toString(), precision: 'month' };
  }
  if (day < 1 || day > daysInMonth) {
    const zero = dayZero === 'month end' ? ', or 00 for the end of the month' : '';
    return refusal(offset + 2, 2, `a day 01 to ${daysInMonth}${zero}`);
  }
  return { ok: true, date: Temporal.PlainDate.from({ year, month, day }).toString(), precision: 'day' };
}

function refusal(offset: number, length: number, allowed: string): DateReading {
  return { ok: false, offset, length, allowed };
}

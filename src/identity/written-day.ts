import { Temporal } from 'temporal-polyfill';

const shape = /^(\d{4})-(\d{2})-(\d{2})$/;
const yearLast = /^(\d{1,2})[./-](\d{1,2})[./-](\d{2}|\d{4})\b/;
const yearFirst = /^(\d{4})[./](\d{1,2})[./](\d{1,2})\b/;
const monthAndYear = /^(\d{1,2})[./-](\d{4})$/;
/** Days since 1900 as spreadsheets keep dates, for years that are meant in earnest. */
const daysOfSpreadsheet = /^[3-6]\d{4}([.,]\d+)?$/;

/**
 * A day as a person wrote it into a file: year first only, since 03/04/2026 is April in one country and March in
 * another.
 *
 * @returns ISO `YYYY-MM-DD`, or what is wrong with it, in words that follow the name of its column
 */
export function readWrittenDay(text: string): { day: string } | { fault: string } {
  const match = shape.exec(text);
  if (match === null)
    return { fault: otherOrderOfDate(text) ?? `"${text.slice(0, 40)}" is not a day; write it as 2026-04-03` };
  const [, year, month, day] = match;
  const written = calendarDay(Number(year), Number(month), Number(day));
  return written === null
    ? { fault: `${text} does not stand in the calendar; day and month may be swapped` }
    : { day: written };
}

/**
 * What to write instead of a date that is not written year first; null when it is none at all.
 * @returns words that follow the name of its column
 */
export function otherOrderOfDate(text: string): string | null {
  if (daysOfSpreadsheet.test(text)) {
    return `${text} is the number by which a spreadsheet keeps a date; show the column as a date, year first, such as 2026-04-03`;
  }
  const month = monthAndYear.exec(text);
  if (month !== null) {
    const number = Number(month[1]);
    if (number < 1 || number > 12) return `${text} is not a month; write it as 2026-04`;
    return `${text}: write the year first, ${month[2]}-${String(number).padStart(2, '0')}`;
  }
  const first = yearFirst.exec(text);
  if (first !== null) {
    const day = calendarDay(Number(first[1]), Number(first[2]), Number(first[3]));
    return day === null ? `${text} does not stand in the calendar` : `${text}: write it as ${day}`;
  }
  const last = yearLast.exec(text);
  if (last === null) return null;
  const [one, other] = [Number(last[1]), Number(last[2])];
  const year = Number(last[3]) + (last[3]?.length === 2 ? 2000 : 0);
  const readings = [...new Set([calendarDay(year, other, one), calendarDay(year, one, other)])].filter(
    (day) => day !== null,
  );
  if (readings.length === 0) return `${last[0]} does not stand in the calendar; write it as 2026-04-03`;
  return readings.length === 1
    ? `${last[0]}: write the year first, ${readings[0]}`
    : `${last[0]} may be read in two ways; write ${readings.join(' or ')}, whichever is meant`;
}

function calendarDay(year: number, month: number, day: number): string | null {
  try {
    return Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' }).toString();
  } catch {
    return null;
  }
}

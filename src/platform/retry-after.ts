import { Temporal } from 'temporal-polyfill';

/** No source keeps us away for longer: a slip of its clock must not silence it for good. */
export const longestWaitSeconds = 7 * 86_400;

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** The three forms of RFC 9110, 5.6.7: the one that is written today, and the two older ones that are still to be read. */
const imfFixdate = /^\w{3}, (?<day>\d{2}) (?<month>\w{3}) (?<year>\d{4}) (?<time>\d{2}:\d{2}:\d{2}) GMT$/;
const rfc850 = /^\w{6,9}, (?<day>\d{2})-(?<month>\w{3})-(?<year>\d{2}) (?<time>\d{2}:\d{2}:\d{2}) GMT$/;
const asctime = /^\w{3} (?<month>\w{3}) (?<day>[ \d]\d) (?<time>\d{2}:\d{2}:\d{2}) (?<year>\d{4})$/;

/**
 * When a source asks us to come back (Retry-After, RFC 9110, 10.2.3): seconds or a date.
 * @param now ISO 8601 instant
 * @returns ISO 8601 instant in UTC with milliseconds, not before now and at most a week from it; null when it does not say
 */
export function retryAfter(header: string | null, now: string): string | null {
  const text = (header ?? '').trim();
  const current = Temporal.Instant.from(now);
  const latest = current.add({ seconds: longestWaitSeconds });
  const asked = /^\d+$/.test(text)
    ? current.add({ seconds: Math.min(Number(text), longestWaitSeconds) })
    : readHttpDate(text, now);
  if (asked === null) return null;
  const [instant = current] = [current, asked, latest].sort(Temporal.Instant.compare).slice(1);
  return instant.toString({ fractionalSecondDigits: 3 });
}

/** @param now decides the century of a year of two digits, which is at most 50 years ahead (RFC 9110, 5.6.7) */
function readHttpDate(text: string, now: string): Temporal.Instant | null {
  const { day, month, year, time } =
    (imfFixdate.exec(text) ?? rfc850.exec(text) ?? asctime.exec(text))?.groups ?? {};
  const number = months.indexOf(month ?? '') + 1;
  if (day === undefined || year === undefined || time === undefined || number === 0) return null;
  const [hour = 0, minute = 0, second = 0] = time.split(':').map(Number);
  const date = { year: fullYear(year, now), month: number, day: Number(day), hour, minute, second };
  try {
    return Temporal.ZonedDateTime.from({ ...date, timeZone: 'UTC' }, { overflow: 'reject' }).toInstant();
  } catch {
    return null;
  }
}

function fullYear(year: string, now: string): number {
  if (year.length === 4) return Number(year);
  const thisYear = Number(now.slice(0, 4));
  const inThisCentury = thisYear - (thisYear % 100) + Number(year);
  return inThisCentury > thisYear + 50 ? inThisCentury - 100 : inThisCentury;
}

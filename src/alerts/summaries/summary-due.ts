import { Temporal } from 'temporal-polyfill';
import { localDay } from '../../identity/local-day.js';
import { nextMorning } from '../schedule/next-morning.js';

/** What is known of the summaries of one person. */
export interface SummaryWish {
  /** Local time, `HH:MM`. */
  at: string;
  /** Since when the person wants them and has where to get them, ISO 8601 instant. */
  since: string;
  /** The latest local day, through `latestTrueDay`, for which one was written, ISO `YYYY-MM-DD`; null: none was. */
  lastDay: string | null;
}

/**
 * The local day whose summary is to be written now; null when none is. One that was missed is made up for on the same day
 * only: yesterday's would tell what is no longer so. What was wished for after its time begins on the next day. A clock
 * that was put back brings no second one.
 *
 * @param now ISO 8601 instant
 * @param timeZone IANA time zone of the studio
 */
export function summaryDue(
  now: string,
  { at, since, lastDay }: SummaryWish,
  timeZone: string,
): string | null {
  const day = localDay(now, timeZone);
  if (lastDay !== null && lastDay >= day) return null;
  const time = timeOn(day, at, timeZone);
  const isTime = Temporal.Instant.compare(time, now) <= 0 && Temporal.Instant.compare(since, time) <= 0;
  return isTime ? day : null;
}

/**
 * The latest local day for which a summary may truly have been written: tomorrow, by a clock that is somewhat behind. What
 * is said to be of a later day was written by a clock that ran ahead, and silences nothing.
 * @param now ISO 8601 instant
 */
export function latestTrueDay(now: string, timeZone: string): string {
  return Temporal.PlainDate.from(localDay(now, timeZone)).add({ days: 1 }).toString();
}

/** When the next summary is written, if the service runs then; ISO 8601 instant. */
export function nextSummary(now: string, wish: SummaryWish, timeZone: string): string {
  if (summaryDue(now, wish, timeZone) !== null) return now;
  return nextMorning(now, wish.at, timeZone);
}

/** The first morning of a local day or after it: where the clocks skip that time it comes as much later. */
function timeOn(day: string, at: string, timeZone: string): string {
  const start = Temporal.PlainDate.from(day).toZonedDateTime(timeZone).toInstant();
  return nextMorning(start.subtract({ nanoseconds: 1 }).toString(), at, timeZone);
}

import { Temporal } from 'temporal-polyfill';
import { isCalendarDay } from '../use-by.js';

/** What is expected later than this is a slip of the pen. */
export const MOST_DAYS_AHEAD = 730;

export interface ExpectedDays {
  /** Null: not known. */
  orderedOn: string | null;
  expectedOn: string;
}

/**
 * What is wrong with the days of something that was ordered; empty: nothing. A day of arrival that is over already is
 * allowed, for what is late may be written down late.
 *
 * @param today the studio's local day, ISO `YYYY-MM-DD`
 */
export function expectedDaysFaults(
  { orderedOn, expectedOn }: ExpectedDays,
  today: string,
): { field: 'orderedOn' | 'expectedOn'; message: string }[] {
  const faults: ReturnType<typeof expectedDaysFaults> = [];
  const ordered = orderedOn === null || isCalendarDay(orderedOn);
  if (!ordered) faults.push({ field: 'orderedOn', message: notADay(orderedOn) });
  else if (orderedOn !== null && orderedOn > today) {
    faults.push({
      field: 'orderedOn',
      message: `${orderedOn} lies after today, ${today}; compare it with the order`,
    });
  }
  if (!isCalendarDay(expectedOn)) {
    faults.push({ field: 'expectedOn', message: notADay(expectedOn) });
    return faults;
  }
  const last = Temporal.PlainDate.from(today).add({ days: MOST_DAYS_AHEAD }).toString();
  if (expectedOn > last) {
    faults.push({
      field: 'expectedOn',
      message: `${expectedOn} lies more than ${MOST_DAYS_AHEAD} days ahead; check the year`,
    });
  } else if (ordered && orderedOn !== null && expectedOn < orderedOn) {
    faults.push({
      field: 'expectedOn',
      message: `${expectedOn} lies before the day of the order, ${orderedOn}; correct one of them`,
    });
  }
  return faults;
}

function notADay(text: string): string {
  return `"${text}" is not a day of the calendar; write it as YYYY-MM-DD`;
}

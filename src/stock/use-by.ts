import { Temporal } from 'temporal-polyfill';

/** How exactly the label states its use-by date. */
export type UseByPrecision = 'day' | 'month' | 'year';

/** A use-by date: the last day on which the unopened item may be used, ISO `YYYY-MM-DD`. */
export interface UseBy {
  lastDay: string;
  precision: UseByPrecision;
}

export interface UseByError {
  error: {
    code: 'use-by not a date' | 'use-by does not exist' | 'use-by year out of range';
    message: string;
  };
}

/** Years outside these are slips of the pen, and would make an item expired or usable for centuries. */
const earliestUseByYear = 1900;
const latestUseByYear = 2199;

const shape = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/;
const allowed = 'Allowed are YYYY-MM-DD, YYYY-MM and YYYY.';

/**
 * Reads a use-by date as it stands on a label. The item is usable through the end of the year, month or day
 * shown (ISO 15223-1:2021, 5.1.4 [S]), so a month means its last day and a year means 31 December.
 *
 * @param text `YYYY-MM-DD`, `YYYY-MM` or `YYYY`; surrounding spaces are ignored
 * @returns the last usable day and the precision of the label, or an error with a message for the person
 */
export function readUseBy(text: string): UseBy | UseByError {
  const shown = text.trim();
  const match = shape.exec(shown);
  if (match === null) {
    return failed(
      'use-by not a date',
      `"${shown.slice(0, 40)}" is not a use-by date. ${allowed} Write the date as on the label, year first.`,
    );
  }
  const year = Number(match[1]);
  if (year < earliestUseByYear || year > latestUseByYear) {
    return failed(
      'use-by year out of range',
      `The use-by date ${shown} lies outside the years ${earliestUseByYear} to ${latestUseByYear}. ` +
        'Compare the year with the label.',
    );
  }
  const month = match[2] === undefined ? 12 : Number(match[2]);
  if (month < 1 || month > 12) return doesNotExist(shown);
  const daysInMonth = Temporal.PlainYearMonth.from({ year, month }).daysInMonth;
  const day = match[3] === undefined ? daysInMonth : Number(match[3]);
  if (day < 1 || day > daysInMonth) return doesNotExist(shown);
  return {
    lastDay: Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' }).toString(),
    precision: match[3] !== undefined ? 'day' : match[2] !== undefined ? 'month' : 'year',
  };
}

/** Whether text is YYYY-MM-DD and stands in the calendar, in years that are believed. */
export function isCalendarDay(text: string): boolean {
  const reading = readUseBy(text);
  return !('error' in reading) && reading.precision === 'day' && reading.lastDay === text;
}

function doesNotExist(shown: string): UseByError {
  return failed(
    'use-by does not exist',
    `The use-by date ${shown} does not exist in the calendar. ${allowed} ` +
      'Compare with the label: day and month may be swapped. If only the month is printed, write YYYY-MM.',
  );
}

function failed(code: UseByError['error']['code'], message: string): UseByError {
  return { error: { code, message } };
}

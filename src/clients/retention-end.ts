import { Temporal } from 'temporal-polyfill';

/** Between when and when what was recorded of a client is kept. */
export interface RetentionSpan {
  /** The last local day of the floor, YYYY-MM-DD. */
  keptThrough: string;
  /** The first local day on which it may be erased: nobody has to, for a floor is no date of erasure. */
  erasableFrom: string;
}

/**
 * Years counted from a day: the day itself does not count, and they end with the day of the same month and number in the
 * last year, or with that month's last day where there is no such number (29 February). So counts Regulation (EEC,
 * Euratom) No 1182/71, Art. 3(1) [S] and 3(2)(c) [M].
 *
 * @param lastRecordOn local day of the last record, YYYY-MM-DD
 * @param years whole years, 0 or more
 * @throws RangeError when the day cannot be read: a caller's mistake
 */
export function retentionEnd(lastRecordOn: string, years: number): RetentionSpan {
  const keptThrough = Temporal.PlainDate.from(lastRecordOn, { overflow: 'reject' }).add({ years });
  return { keptThrough: keptThrough.toString(), erasableFrom: keptThrough.add({ days: 1 }).toString() };
}

/** True while the floor runs on a local day. */
export function retentionRuns(span: RetentionSpan, today: string): boolean {
  return today < span.erasableFrom;
}

import { Temporal } from 'temporal-polyfill';

const dayMilliseconds = 86_400_000;

/** The number of an ISO day, counted from another: yesterday is −1. */
export function dayNumber(day: string, from: string): number {
  return Math.round((Date.parse(`${day}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / dayMilliseconds);
}

/** The ISO day of a number counted from another day. */
export function dayOfNumber(number: number, from: string): string {
  return new Date(Date.parse(`${from}T00:00:00Z`) + number * dayMilliseconds).toISOString().slice(0, 10);
}

/**
 * Makes a function that tells the local day of many instants, as a number counted from one day. A time zone is asked once
 * for each day of UTC, or twice on a day on which the clocks change: tens of thousands of instants of a record take no
 * longer than their days.
 *
 * @param timeZone IANA time zone
 * @param from ISO day that is 0
 */
export function localDayNumbers(timeZone: string, from: string): (instant: string) => number {
  const start = Date.parse(`${from}T00:00:00Z`);
  /** Offsets in milliseconds of a day of UTC; null: they differ within it. */
  const offsets = new Map<number, number | null>();
  const offsetAt = (milliseconds: number) =>
    Temporal.Instant.fromEpochMilliseconds(milliseconds).toZonedDateTimeISO(timeZone).offsetNanoseconds / 1e6;
  const offsetOf = (utcDay: number): number | null => {
    const known = offsets.get(utcDay);
    if (known !== undefined) return known;
    const first = offsetAt(utcDay * dayMilliseconds);
    const last = offsetAt((utcDay + 1) * dayMilliseconds - 1);
    const offset = first === last ? first : null;
    offsets.set(utcDay, offset);
    return offset;
  };
  return (instant) => {
    const milliseconds = Date.parse(instant);
    const offset = offsetOf(Math.floor(milliseconds / dayMilliseconds)) ?? offsetAt(milliseconds);
    return Math.floor((milliseconds + offset - start) / dayMilliseconds);
  };
}

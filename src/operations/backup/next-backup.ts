import { Temporal } from 'temporal-polyfill';

export interface BackupTimes {
  /** When the last good backup was made that was not made later than now; null when there is none. */
  lastGoodAt: string | null;
  /** When the first entry of the record was written; null as long as the record is empty. */
  recordBegan: string | null;
  /** Hours between two backups; 0 when none are scheduled. */
  everyHours: number;
}

const millisecondsPerHour = 3_600_000;

/** When the next scheduled backup is due, as an instant; null when none is. */
export function nextBackup({ lastGoodAt, recordBegan, everyHours }: BackupTimes, now: string): string | null {
  const since = lastGoodAt ?? recordBegan;
  if (everyHours === 0 || since === null) return null;
  // Told by a clock that was ahead: how long the record waits for its first backup is not known.
  if (Temporal.Instant.compare(since, now) > 0) return now;
  return hoursAfter(since, everyHours);
}

/** The instant so many hours later, of which there may be parts. */
export function hoursAfter(instant: string, hours: number): string {
  return Temporal.Instant.from(instant)
    .add({ milliseconds: Math.round(hours * millisecondsPerHour) })
    .toString({ smallestUnit: 'millisecond' });
}

/** Whether so much time has passed that a scheduled backup must have been left out: two intervals. */
export function isOverdue(times: BackupTimes, now: string): boolean {
  const overdueFrom = nextBackup({ ...times, everyHours: times.everyHours * 2 }, now);
  return overdueFrom !== null && Temporal.Instant.compare(now, overdueFrom) >= 0;
}

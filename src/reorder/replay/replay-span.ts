/** The longest that is looked back, in weeks. */
export const MOST_WEEKS = 52;
/** Of the record that must lie before the first day that is replayed: from less nothing can be foretold. */
export const DAYS_BEFORE = 91;
/** Fewer weeks say nothing. */
export const FEWEST_WEEKS = 4;
/** Days of record without which nothing can be replayed. */
export const DAYS_NEEDED = DAYS_BEFORE + 7 * FEWEST_WEEKS;

/**
 * How many whole weeks before the day of the plan can be replayed.
 *
 * @param recordedDays since the first session on record
 * @returns 0 when the record is too short
 */
export function weeksToReplay(recordedDays: number): number {
  if (recordedDays < DAYS_NEEDED) return 0;
  return Math.min(MOST_WEEKS, Math.floor((recordedDays - DAYS_BEFORE) / 7));
}

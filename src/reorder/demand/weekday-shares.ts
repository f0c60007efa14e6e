/** Fewer sessions do not tell which days a studio is closed. */
const FEWEST_FOR_WEEKDAYS = 20;

/**
 * Of each ISO weekday, Monday first: the share of a week's sessions that falls on it. A day nobody ever worked is closed: 0.
 *
 * @param days of sessions, counted from the day of the plan
 * @param weekday of the day of the plan, Monday 1 to Sunday 7
 * @returns null when there are too few to tell
 */
export function weekdayShares(days: readonly number[], weekday: number): number[] | null {
  if (days.length < FEWEST_FOR_WEEKDAYS) return null;
  const counts = new Array<number>(7).fill(0);
  for (const day of days) {
    const index = weekdayIndex(weekday, day);
    counts[index] = (counts[index] ?? 0) + 1;
  }
  return counts.map((count) => count / days.length);
}

/** 0 for Monday to 6 for Sunday, of a day counted from the day of the plan. */
export function weekdayIndex(weekday: number, day: number): number {
  return (((weekday - 1 + day) % 7) + 7) % 7;
}

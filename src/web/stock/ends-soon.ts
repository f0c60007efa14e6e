import { Temporal } from 'temporal-polyfill';

/** How many days before an end the studio wants to hear of it. */
export interface NearDays {
  useByNearDays: number;
  openedLifeEndingDays: number;
}

/**
 * Whether something that may still be used has to be used soon: an opened bottle by the days for opened lives, anything
 * else by those for use-by dates.
 * @param lastDay last usable day, YYYY-MM-DD; null when none is known
 * @param today the studio's day
 */
export function endsSoon(
  { lastDay, openedAt }: { lastDay: string | null; openedAt: string | null },
  today: string,
  { useByNearDays, openedLifeEndingDays }: NearDays,
): boolean {
  if (lastDay === null) return false;
  const { days } = Temporal.PlainDate.from(today).until(lastDay, { largestUnit: 'days' });
  return days >= 0 && days <= (openedAt === null ? useByNearDays : openedLifeEndingDays);
}

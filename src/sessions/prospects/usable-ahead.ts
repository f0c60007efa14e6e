import { Temporal } from 'temporal-polyfill';
import type { LastUsableDay } from '../../stock/opened-life.js';

/**
 * Whether something may still be used at an instant to come, by what is known of its end now. It says the same as
 * `judgeShelfLife`, of many instants at little cost: the end is worked out once.
 *
 * @param day the studio's local day of the instant, ISO `YYYY-MM-DD`
 * @param at ISO 8601 instant
 */
export function isUsableAt(
  { lastDay, lastInstant }: Pick<LastUsableDay, 'lastDay' | 'lastInstant'>,
  day: string,
  at: string,
): boolean {
  if (lastDay === null) return true;
  return lastInstant === null ? day <= lastDay : Temporal.Instant.compare(at, lastInstant) <= 0;
}

import { Temporal } from 'temporal-polyfill';

/**
 * What all chances of a plan are drawn from: the same for all plans of a day, so that what differs between two of them is
 * what was supposed to be different, and none of it luck.
 *
 * @param day ISO `YYYY-MM-DD`
 * @returns a whole number from 1
 */
export function seedOfDay(day: string): number {
  const days = Temporal.PlainDate.from('2000-01-01').until(day, { largestUnit: 'days' }).days;
  return Math.max(1, days);
}

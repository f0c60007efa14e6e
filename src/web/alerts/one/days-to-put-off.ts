import { Temporal } from 'temporal-polyfill';

/**
 * The days until which an alert may be put off: from tomorrow on, at most a year.
 * @param today plain date, local to the studio
 */
export function daysToPutOff(today: string): { first: string; last: string } {
  const day = Temporal.PlainDate.from(today);
  return { first: day.add({ days: 1 }).toString(), last: day.add({ years: 1 }).toString() };
}

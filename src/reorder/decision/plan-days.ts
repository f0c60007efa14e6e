import { Temporal } from 'temporal-polyfill';

/** The local date of a day counted from the day of the plan, ISO. */
export function dateOfDay(plannedOn: string, day: number): string {
  return Temporal.PlainDate.from(plannedOn).add({ days: day }).toString();
}

/** Days from the day of the plan to a date. */
export function dayOfDate(plannedOn: string, date: string): number {
  return Temporal.PlainDate.from(plannedOn).until(Temporal.PlainDate.from(date), { largestUnit: 'days' })
    .days;
}

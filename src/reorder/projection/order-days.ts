import { Temporal } from 'temporal-polyfill';
import { NEVER } from './item-facts.js';

export interface OrderCalendar {
  /** ISO date of day 0, local to the studio. */
  firstDay: string;
  days: number;
  /** ISO weekdays on which orders can be placed, 1 (Monday) to 7; none: never. */
  weekdays: readonly number[];
  /** ISO dates on which none can. */
  closedDates: readonly string[];
}

/** Of each day the first day on or after it on which an order can be placed; NEVER when there is none within the days. */
export function orderDays({ firstDay, days, weekdays, closedDates }: OrderCalendar): Int32Array {
  const first = Temporal.PlainDate.from(firstDay);
  const closed = new Set(closedDates.map((date) => first.until(date, { largestUnit: 'days' }).days));
  const nextOrderDay = new Int32Array(days);
  for (let day = days - 1, next = NEVER; day >= 0; day--) {
    const weekday = ((first.dayOfWeek - 1 + day) % 7) + 1;
    if (weekdays.includes(weekday) && !closed.has(day)) next = day;
    nextOrderDay[day] = next;
  }
  return nextOrderDay;
}

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
export function orderDays(_calendar: OrderCalendar): Int32Array {
  throw new Error('not yet');
}

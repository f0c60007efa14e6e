import { Temporal } from 'temporal-polyfill';

/** How often a recall is rehearsed. */
export interface DrillRhythm {
  /** Null: as the studio likes. */
  everyMonths: number | null;
  /** The day by which the next drill is to be closed; null: none is asked for. */
  nextOn: string | null;
}

const overdueMonths = 1;

/**
 * Whether a drill is due: a notice from the day it is due, a warning when it is overdue by a month.
 * @param day the studio's local day
 */
export function drillDue(
  { nextOn }: Pick<DrillRhythm, 'nextOn'>,
  day: string,
): { severity: 'notice' | 'warning'; dueOn: string } | null {
  if (nextOn === null || day < nextOn) return null;
  return { severity: day >= monthsLater(nextOn, overdueMonths) ? 'warning' : 'notice', dueOn: nextOn };
}

/**
 * When the next drill is due after one was closed: so many months later, and never earlier than it was due already. One
 * that is asked for once is done with.
 */
export function nextDrillOn({ everyMonths, nextOn }: DrillRhythm, closedOn: string): string | null {
  if (nextOn === null) return null;
  if (everyMonths === null) return closedOn >= nextOn ? null : nextOn;
  const later = monthsLater(closedOn, everyMonths);
  return later > nextOn ? later : nextOn;
}

function monthsLater(day: string, months: number): string {
  return Temporal.PlainDate.from(day).add({ months }).toString();
}

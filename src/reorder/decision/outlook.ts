import { firstShortDay, type Outcome } from '../projection/outcome.js';
import { figure } from './figure.js';
import type { Outlook } from './item-decision-result.js';
import { dateOfDay } from './plan-days.js';

/** What an outcome means for the shelf, in dates. */
export function outlookOf(outcome: Outcome, coverDays: number, plannedOn: string): Outlook {
  const days = outcome.firstShortCounts.length;
  const dated = (day: number | null) => (day === null ? null : dateOfDay(plannedOn, day));
  return {
    until: dateOfDay(plannedOn, Math.max(0, days - 1)),
    shortChance: figure(outcome.short.mean),
    shortOn: {
      early: dated(firstShortDay(outcome, 0.05)),
      middle: dated(firstShortDay(outcome, 0.5)),
      late: dated(firstShortDay(outcome, 0.95)),
    },
    expectedUnmetUnits: figure(outcome.unmetUnits.mean),
    expectedWasteUnits: figure(outcome.wastedUnits.mean),
    expectedWasteMinor: figure(outcome.wastedMinor.mean),
    coverDays: figure(coverDays),
  };
}

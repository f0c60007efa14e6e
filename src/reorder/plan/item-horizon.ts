import type { DemandModel } from '../demand/demand-model.js';
import { NEVER } from '../projection/item-facts.js';

/** Days in which orders are placed and what is missing counts. */
export const HORIZON_DAYS = 120;
/** What is left is followed for so many days more at most. */
export const MOST_TAIL_DAYS = 610;
/** And at least for so many. */
export const FEWEST_TAIL_DAYS = 30;
/** What is foretold in all. */
export const LONGEST_DAYS = HORIZON_DAYS + MOST_TAIL_DAYS;

/**
 * For how many days what is left of an item is followed after the horizon: until it is used twice over at the expected
 * pace, or past its date, whichever comes first. Slow shades need long tails and cost little; fast needles need short ones.
 *
 * @param stockUnits what is here and coming, and what is ordered at once
 * @param unitsPerDay expected
 * @param lifeDays the longest that any of it may still be used; NEVER when there is no date
 */
export function tailDays(stockUnits: number, unitsPerDay: number, lifeDays: number): number {
  const usedUp = unitsPerDay > 0 ? Math.ceil((2 * stockUnits) / unitsPerDay) : MOST_TAIL_DAYS;
  const untilExpiry = lifeDays >= NEVER ? MOST_TAIL_DAYS : lifeDays + 1;
  return Math.max(FEWEST_TAIL_DAYS, Math.min(usedUp, untilExpiry, MOST_TAIL_DAYS));
}

/** The first days of a model. */
export function firstDaysOf(model: DemandModel, days: number): DemandModel {
  if (days >= model.days) return model;
  return {
    days,
    expected: model.expected.filter(({ firstDay }) => firstDay < days),
    unforeseen: model.unforeseen.map((use) => ({
      ...use,
      dayShares: use.dayShares.slice(0, days),
      unknownShares: use.unknownShares.slice(0, days),
    })),
  };
}

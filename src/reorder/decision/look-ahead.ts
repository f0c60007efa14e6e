import type { DemandModel } from '../demand/demand-model.js';
import { NEVER, type Replenishment } from '../projection/item-facts.js';
import { daysQuantile } from './chances-of-days.js';
import { usesPerYear } from './expected-need.js';

const usualHorizonDays = 120;
const yearDays = 365;
const shortestTailDays = 60;
const longestDays = 1_095;
/** Uses after which what was bought is used up anyhow: a tail of more would only be slow. */
const usesInTail = 150;

/**
 * How far to look ahead. What is used every week is decided within four months; of what is used now and then a year
 * must be seen, and then whether it is used before it expires.
 *
 * @returns days in which orders are placed, and the days after them; together at most the days of the model
 */
export function lookAhead(
  model: DemandModel,
  replenishments: readonly Replenishment[],
): { horizonDays: number; tailDays: number } {
  const uses = usesPerYear(model);
  const wantedHorizon = uses < 52 ? yearDays : usualHorizonDays;
  let life = yearDays;
  let lead = 0;
  for (const { lifeDays, leadTime } of replenishments) {
    life = Math.max(life, lifeDays >= NEVER ? longestDays : lifeDays);
    lead = Math.max(lead, daysQuantile(leadTime, 0.95));
  }
  const daysOfUses = uses > 0 ? Math.ceil((usesInTail * yearDays) / uses) : longestDays;
  const wantedTail = Math.max(shortestTailDays, Math.min(life + lead, daysOfUses));
  const days = Math.min(model.days, longestDays, wantedHorizon + wantedTail);
  const horizonDays = Math.min(wantedHorizon, Math.max(1, days - Math.min(shortestTailDays, days >> 1)));
  return { horizonDays, tailDays: Math.max(0, days - horizonDays) };
}

/** The same model, not further than the given days. */
export function modelUntil(model: DemandModel, days: number): DemandModel {
  if (days >= model.days) return model;
  return {
    days,
    expected: model.expected.filter(({ firstDay }) => firstDay < days),
    unforeseen: model.unforeseen.map((series) => ({
      ...series,
      dayShares: series.dayShares.subarray(0, days),
      unknownShares: series.unknownShares.subarray(0, days),
    })),
  };
}

import { NEVER, type Replenishment } from '../projection/item-facts.js';
import { daysWithin } from '../supply/lead-time.js';
import type { AppointmentOrder } from './appointment-order.js';
import type { ItemDecisionFacts } from './decision-facts.js';
import { expectedNeed } from './expected-need.js';
import { figure } from './figure.js';
import type { ItemDecision, Outlook } from './item-decision-result.js';
import { dateOfDay } from './plan-days.js';
import type { RangeChoice } from './range-choice.js';

/** One part of why a line is as it is; units as in the decision. */
export type Reason =
  /** Of `booked` sessions so many will take it, as expected. */
  | { code: 'booked need'; units: number; sessions: number; booked: number; until: string }
  | { code: 'course need'; units: number; courses: number; until: string }
  | { code: 'touch-ups owed'; units: number; sessions: number; until: string }
  | { code: 'unforeseen need'; units: number; unitsPerWeek: number; until: string }
  | { code: 'no need expected'; until: string }
  | { code: 'in stock'; units: number; containers: number; opened: number }
  | { code: 'expires'; units: number; wasteMinor: number; firstOn: string }
  | { code: 'on the way'; units: number; likely: string }
  | { code: 'on hold'; units: number }
  | { code: 'runs short'; chance: number; on: string | null; until: string }
  | { code: 'lasts'; chance: number; until: string }
  | { code: 'lead time'; typicalDays: number; days95: number }
  | { code: 'order'; packs: number; containers: number; units: number; on: string; priceMinor: number }
  | { code: 'too late'; shortChance: number; arrival: string }
  | { code: 'covers'; days: number; until: string; chanceAfter: number }
  | { code: 'why not less'; packs: number; moreMinor: number; unmetUnits: number; unmetUnitsMore: number }
  | { code: 'why not more'; packs: number; moreMinor: number; wasteUnits: number; wasteUnitsMore: number }
  | { code: 'why not earlier'; on: string; moreMinor: number }
  | { code: 'why not later'; on: string; moreMinor: number }
  | {
      code: 'pack exceeds need';
      packUnits: number;
      needUnits: number;
      wasteUnits: number;
      wasteMinor: number;
    }
  | {
      code: 'range';
      choice: RangeChoice;
      chosenBy: 'manager' | 'service target' | 'too seldom' | 'cost';
      costPerYearMinor: number;
      otherwise: { choice: RangeChoice; costPerYearMinor: number; possible: boolean }[];
    }
  | { code: 'booked in time'; share: number; days95: number; sessionsPerYear: number; unmetPerYear: number }
  | { code: 'appointments to order for'; sessions: number; units: number; firstOn: string }
  | { code: 'no offer' };

/** Days over which the need is told, at least: shorter says too little to a manager. */
const shortestTold = 28;

/**
 * The reasons of a decision, in the order in which they are said: what is needed, what is there, what happens without an
 * order, what is decided, and why not otherwise.
 */
export function explain(
  facts: ItemDecisionFacts,
  decision: Omit<ItemDecision, 'reasons'>,
  replenishment: Replenishment | null,
  booked: AppointmentOrder | null,
): Reason[] {
  const days95 = replenishment === null ? 0 : daysWithin(replenishment.leadTime, 0.95);
  const toldDays = Math.min(facts.horizonDays, Math.max(shortestTold, days95 + 14));
  const reasons: Reason[] = [
    ...needReasons(facts, toldDays),
    ...stockReasons(facts, decision.without),
    ...shortReasons(decision.without),
  ];
  if (replenishment === null) reasons.push({ code: 'no offer' });
  else reasons.push({ code: 'lead time', typicalDays: daysWithin(replenishment.leadTime, 0.5), days95 });
  reasons.push(...rangeReasons(decision, days95));
  reasons.push(...orderReasons(facts, decision, booked));
  return reasons;
}

function needReasons({ demand, plannedOn }: ItemDecisionFacts, days: number): Reason[] {
  const { bookings, courses, touchUps, unforeseen } = expectedNeed(demand, days);
  const until = dateOfDay(plannedOn, days - 1);
  const reasons: Reason[] = [];
  if (bookings.units > 0) {
    reasons.push({
      code: 'booked need',
      units: figure(bookings.units),
      sessions: figure(bookings.uses),
      booked: Math.max(1, Math.round(bookings.booked)),
      until,
    });
  }
  if (courses.units > 0) {
    reasons.push({ code: 'course need', units: figure(courses.units), courses: figure(courses.uses), until });
  }
  if (touchUps.units > 0) {
    reasons.push({
      code: 'touch-ups owed',
      units: figure(touchUps.units),
      sessions: figure(touchUps.uses),
      until,
    });
  }
  if (unforeseen.units > 0) {
    const unitsPerWeek = figure((unforeseen.units * 7) / days);
    reasons.push({ code: 'unforeseen need', units: figure(unforeseen.units), unitsPerWeek, until });
  }
  if (reasons.length === 0) reasons.push({ code: 'no need expected', until });
  return reasons;
}

function stockReasons({ stock, onHoldUnits, plannedOn }: ItemDecisionFacts, without: Outlook): Reason[] {
  let units = 0;
  let containers = 0;
  let opened = 0;
  let firstDay = NEVER;
  for (const batch of stock.batches) {
    units += batch.containers * batch.unitsEach;
    containers += batch.containers;
    if (batch.opened) opened += batch.containers;
    if (batch.containers > 0) firstDay = Math.min(firstDay, batch.lastDay);
  }
  const reasons: Reason[] = [{ code: 'in stock', units, containers, opened }];
  for (const { containers: coming, unitsEach, arrival } of stock.onTheWay) {
    if (coming * unitsEach === 0) continue;
    const likely = dateOfDay(plannedOn, Math.max(0, daysWithin(arrival, 0.5)));
    reasons.push({ code: 'on the way', units: coming * unitsEach, likely });
  }
  if (onHoldUnits > 0) reasons.push({ code: 'on hold', units: onHoldUnits });
  if (without.expectedWasteUnits >= 1 && firstDay < NEVER) {
    reasons.push({
      code: 'expires',
      units: without.expectedWasteUnits,
      wasteMinor: without.expectedWasteMinor,
      firstOn: dateOfDay(plannedOn, Math.max(0, firstDay)),
    });
  }
  return reasons;
}

function shortReasons({ shortChance, shortOn, until }: Outlook): Reason[] {
  if (shortChance < 0.05) return [{ code: 'lasts', chance: figure(1 - shortChance), until }];
  return [{ code: 'runs short', chance: shortChance, on: shortOn.middle ?? shortOn.early, until }];
}

function rangeReasons(decision: Omit<ItemDecision, 'reasons'>, days95: number): Reason[] {
  const { range } = decision;
  if (range === null) return [];
  const chosen = range.options.find(({ choice }) => choice === range.choice);
  if (chosen === undefined) return [];
  const reasons: Reason[] = [
    {
      code: 'range',
      choice: range.choice,
      chosenBy: range.chosenBy,
      costPerYearMinor: chosen.costPerYearMinor,
      otherwise: range.options
        .filter(({ choice }) => choice !== range.choice)
        .map(({ choice, costPerYearMinor }) => ({
          choice,
          costPerYearMinor,
          possible: choice !== 'order for the appointment' || range.appointmentPossible,
        })),
    },
  ];
  if (range.choice === 'order for the appointment' || !range.appointmentPossible) {
    const appointment = range.options.find(({ choice }) => choice === 'order for the appointment');
    reasons.push({
      code: 'booked in time',
      share: range.bookedInTime,
      days95,
      sessionsPerYear: range.sessionsPerYear,
      unmetPerYear: appointment?.unmetSessionsPerYear ?? 0,
    });
  }
  return reasons;
}

function orderReasons(
  facts: ItemDecisionFacts,
  { decision, order, after, costs, notes }: Omit<ItemDecision, 'reasons'>,
  booked: AppointmentOrder | null,
): Reason[] {
  const reasons: Reason[] = [];
  if (decision === 'order for the appointment' && booked !== null) {
    reasons.push({
      code: 'appointments to order for',
      sessions: booked.sessions,
      units: booked.units,
      firstOn: dateOfDay(facts.plannedOn, booked.neededDay),
    });
  }
  if (order !== null) {
    const { packs, containers, units, on, priceMinor } = order;
    reasons.push({ code: 'order', packs, containers, units, on, priceMinor });
    const late = notes.find((note) => note.code === 'too late');
    if (late !== undefined) reasons.push({ ...late });
    const until = dateOfDay(facts.plannedOn, Math.round(after.coverDays));
    reasons.push({ code: 'covers', days: figure(after.coverDays), until, chanceAfter: after.shortChance });
  }
  const { chosen, neighbours } = costs;
  for (const { change, packs, on, cost, expectedUnmetUnits, expectedWasteUnits } of neighbours) {
    if (order === null) break;
    const moreMinor = figure(cost.totalMinor - chosen.totalMinor);
    // Where the target decides against cost, cost is no reason.
    if (moreMinor < 0) continue;
    if (change === 'one pack less') {
      const unmetUnitsMore = figure(expectedUnmetUnits - after.expectedUnmetUnits);
      reasons.push({
        code: 'why not less',
        packs,
        moreMinor,
        unmetUnits: expectedUnmetUnits,
        unmetUnitsMore,
      });
    } else if (change === 'one pack more') {
      const wasteUnitsMore = figure(expectedWasteUnits - after.expectedWasteUnits);
      reasons.push({
        code: 'why not more',
        packs,
        moreMinor,
        wasteUnits: expectedWasteUnits,
        wasteUnitsMore,
      });
    } else if (change === 'one order day earlier') {
      reasons.push({ code: 'why not earlier', on, moreMinor });
    } else {
      reasons.push({ code: 'why not later', on, moreMinor });
    }
  }
  for (const note of notes) {
    if (note.code !== 'pack exceeds need') continue;
    reasons.push({
      code: 'pack exceeds need',
      packUnits: note.packUnits,
      needUnits: note.inDateNeedUnits,
      wasteUnits: note.expectedWasteUnits,
      wasteMinor: note.wasteMinor,
    });
  }
  return reasons;
}

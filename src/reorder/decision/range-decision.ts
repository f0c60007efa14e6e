import type { DemandModel } from '../demand/demand-model.js';
import type { DemandDraws } from '../projection/demand-draws.js';
import { type CostRates, type ItemStock, NEVER, type Replenishment } from '../projection/item-facts.js';
import { Simulation } from '../projection/simulate.js';
import { packPriceMinor } from '../supply/pack-cost.js';
import { type AppointmentStakes, shareOrderedFor } from './appointment-order.js';
import { runForAppointments } from './appointment-run.js';
import type { BasePolicy } from './base-policy.js';
import { shelfOf } from './batch-cost.js';
import { type LeftWorth, totalCostMinor, unitsLeft } from './expected-cost.js';
import { meanAmount, meanOfComponents, usesPerYear } from './expected-need.js';
import { figure } from './figure.js';
import type { RangeComparison, RangeOption } from './item-decision-result.js';
import type { RangeChoice } from './range-choice.js';

export interface RangeFacts {
  replenishment: Replenishment;
  openedLifeDays: number;
  demand: DemandModel;
  draws: DemandDraws;
  base: BasePolicy;
  rates: CostRates;
  horizonDays: number;
  usualUnitsPerNeed: number;
  /** The manager's; null: what the figures say. */
  chosen: RangeChoice | null;
  /** The service target, where it says what a missing unit costs, 0 to 1; null: that was set by hand. */
  target: number | null;
  paths: number;
}

const yearDays = 365;
/** Used less often, or lasting longer, an item is slow: it is asked whether to keep it at all. */
const slowUsesPerYear = 26;
const slowOrderDays = 180;
/** Nothing is kept for longer, though it may last. */
const longestKeptDays = 3 * yearDays;

/** Whether an item is used so seldom, or comes in so much at once, that the question arises how to keep it. */
export function isSlow(demand: DemandModel, base: BasePolicy): boolean {
  const smallest = base.leastPacks * base.packUnits;
  return usesPerYear(demand) < slowUsesPerYear || base.meanNeedPerDay * slowOrderDays < smallest;
}

/**
 * What each way of keeping a slow item costs in a year once what is here is used up: purchases of what is used, waste,
 * orders and deliveries, holding, and sessions that could not have it. Ordering for the appointment is possible as soon as
 * some needs are known early enough for a delivery: those who come without are in its cost.
 *
 * What a missing unit costs by the service target is the price of one unit too many: it says how much to keep, not what a
 * session is worth that cannot be done. So unless that worth was set by hand, nothing is let run out because it is cheaper:
 * of the ways that meet the target the one that costs least is taken, or else the one that comes nearest to it. Only what
 * has fewer than one use to expect while a pack keeps is not kept: a target alone would buy a bottle of every shade that one
 * session of many may take. It is ordered when somebody is known to need it.
 */
export function compareRange(facts: RangeFacts): RangeComparison {
  const { replenishment, demand, base, rates, chosen } = facts;
  const sessionsPerYear = usesPerYear(demand);
  const bookedInTime = shareBookedInTime(demand, replenishment);
  const appointmentPossible = bookedInTime > 0;
  const keep = keepInStock(facts);
  const appointment = orderForAppointment(facts, bookedInTime);
  const runOut = letRunOut(facts);
  const options = [keep, appointment, runOut];
  const served = appointmentPossible ? [keep, appointment] : [keep];
  // Nothing is needed, needs cost nothing, or nothing could be used in date: there is nothing to keep it for.
  const isVain =
    sessionsPerYear <= 0 ||
    base.meanNeedPerDay <= 0 ||
    rates.shortageMinor <= 0 ||
    base.smallest.usedUnits <= 0;
  const byTarget = facts.target !== null && !isVain;
  const isTooSeldom = byTarget && usesOfPack(sessionsPerYear, replenishment) < 1;
  const sensible = byTarget ? meetingTarget(served, sessionsPerYear, facts.target ?? 0) : [...served, runOut];
  const unkept = appointmentPossible && !isVain ? appointment.choice : runOut.choice;
  const advised = isVain || isTooSeldom ? unkept : cheapestOf(sensible, keep).choice;
  return {
    choice: chosen ?? advised,
    advised,
    chosenBy: chosen !== null ? 'manager' : isTooSeldom ? 'too seldom' : byTarget ? 'service target' : 'cost',
    sessionsPerYear: figure(sessionsPerYear),
    bookedInTime: figure(bookedInTime),
    appointmentPossible,
    options,
  };
}

/** Uses to be expected while a pack keeps. */
function usesOfPack(sessionsPerYear: number, { lifeDays }: Replenishment): number {
  return (sessionsPerYear * Math.min(lifeDays, longestKeptDays)) / yearDays;
}

/** What is at stake with an order for appointments: of one nobody turns out to need, the share that is wasted is lost. */
export function stakesOf(
  { smallest, packUnits }: BasePolicy,
  { shortageMinor, orderMinor }: CostRates,
  { prices }: Replenishment,
): AppointmentStakes {
  const { packs, wastedUnits } = smallest;
  const price = packs * packPriceMinor(prices, packs) + orderMinor;
  return { shortageMinor, lossMinor: (price * wastedUnits) / (packs * packUnits) };
}

/** Those that leave no more unmet than the target allows; when none does, the one that leaves least. */
function meetingTarget(
  options: readonly RangeOption[],
  sessionsPerYear: number,
  target: number,
): RangeOption[] {
  const allowed = (1 - target) * sessionsPerYear;
  const meeting = options.filter(({ unmetSessionsPerYear }) => unmetSessionsPerYear <= allowed);
  if (meeting.length > 0) return meeting;
  const least = Math.min(...options.map(({ unmetSessionsPerYear }) => unmetSessionsPerYear));
  return options.filter(({ unmetSessionsPerYear }) => unmetSessionsPerYear <= least);
}

/** Of equal ones the first. */
function cheapestOf(options: readonly RangeOption[], otherwise: RangeOption): RangeOption {
  let cheapest: RangeOption | null = null;
  for (const option of options) {
    if (cheapest === null || option.costPerYearMinor < cheapest.costPerYearMinor - 1e-9) cheapest = option;
  }
  return cheapest ?? otherwise;
}

/** The share of needs that is known when there is still time for a delivery, over the lead times. */
export function shareBookedInTime(demand: DemandModel, { leadTime }: Replenishment): number {
  let known = 0;
  let all = 0;
  for (const { unknownShares, components, periodDays, amount } of demand.unforeseen) {
    if (unknownShares.length === 0) continue;
    const weight = (meanOfComponents(components) * meanAmount(amount)) / Math.max(1, periodDays);
    for (const [index, days] of leadTime.days.entries()) {
      const ahead = Math.min(Math.max(0, Math.ceil(days)), unknownShares.length - 1);
      known += weight * (leadTime.weights[index] ?? 0) * (1 - (unknownShares[ahead] ?? 1));
    }
    all += weight;
  }
  // Without anything unforeseen all needs are known.
  return all > 0 ? Math.min(1, Math.max(0, known / all)) : 1;
}

/** Starts with one batch on the shelf and orders again by the reorder point. */
function keepInStock(facts: RangeFacts): RangeOption {
  const { replenishment, openedLifeDays, draws, base, rates, paths } = facts;
  const horizonDays = rangeHorizon(facts);
  const stock: ItemStock = { batches: [shelfOf(base.packs, replenishment)], onTheWay: [], openedLifeDays };
  const horizon = { days: horizonDays, tailDays: draws.days - horizonDays };
  const outcome = new Simulation(stock, replenishment, draws, rates, horizon).evaluate(
    { first: null, reorderPointUnits: base.reorderPointUnits, packs: base.packs },
    { from: 0, to: paths },
  );
  const years = horizonDays / yearDays;
  const { lifeDays } = replenishment;
  const left: LeftWorth = {
    ...base.left,
    lifeDays: lifeDays >= NEVER ? NEVER : Math.max(0, lifeDays - horizon.tailDays),
  };
  const total = totalCostMinor(outcome, rates, left) + rates.orderMinor;
  // Of what was bought a part serves needs after the horizon: it is not of these years.
  const used = outcome.usedUnits.mean;
  const later = unitsLeft(outcome, left);
  const ofTheseYears = used + later > 0 ? used / (used + later) : 1;
  return option(facts, 'keep in stock', years, {
    costMinor: total + used * rates.unitMinor,
    usedUnits: used,
    unmetUnits: outcome.unmetUnits.mean,
    wastedUnits: outcome.wastedUnits.mean * ofTheseYears,
    wastedMinor: outcome.wastedMinor.mean * ofTheseYears,
    orders: (outcome.orders.mean + 1) * ofTheseYears,
    packs: (outcome.packs.mean + base.packs) * ofTheseYears,
  });
}

/** A year where it was drawn, so that a batch may come to its end; the rest is the tail. */
function rangeHorizon({ horizonDays, draws, replenishment }: RangeFacts): number {
  const wanted = Math.max(horizonDays, Math.min(yearDays, draws.days >> 1));
  return Math.min(wanted, draws.days, replenishment.nextOrderDay.length);
}

function orderForAppointment(facts: RangeFacts, bookedInTime: number): RangeOption {
  const { replenishment, openedLifeDays, draws, base, rates, paths } = facts;
  const { packContainers, unitsEach, lifeDays } = replenishment;
  const minimumPacks = base.leastPacks;
  // Of what is booked in time, that is ordered for which is known well enough.
  const orderedFor =
    bookedInTime * shareOrderedFor(facts.demand, replenishment, stakesOf(base, rates, replenishment));
  const terms = {
    ...{ packContainers, unitsEach, minimumPacks, lifeDays, openedLifeDays },
    bookedInTime: orderedFor,
  };
  const run = runForAppointments(draws, terms, paths);
  const wastedMinor = run.wastedUnits * rates.unitMinor;
  return option(facts, 'order for the appointment', draws.days / yearDays, {
    costMinor:
      run.usedUnits * rates.unitMinor +
      wastedMinor +
      run.orders * rates.orderMinor +
      run.unmetUnits * rates.shortageMinor +
      (packPriceMinor(replenishment.prices, minimumPacks) - rates.unitMinor * base.packUnits) * run.packs,
    usedUnits: run.usedUnits,
    unmetUnits: run.unmetUnits,
    wastedUnits: run.wastedUnits,
    wastedMinor,
    orders: run.orders,
    packs: run.packs,
  });
}

function letRunOut(facts: RangeFacts): RangeOption {
  const unmetUnits = facts.base.meanNeedPerDay * yearDays;
  return option(facts, 'let run out', 1, {
    costMinor: unmetUnits * facts.rates.shortageMinor,
    usedUnits: 0,
    unmetUnits,
    wastedUnits: 0,
    wastedMinor: 0,
    orders: 0,
    packs: 0,
  });
}

interface Course {
  costMinor: number;
  usedUnits: number;
  unmetUnits: number;
  wastedUnits: number;
  wastedMinor: number;
  orders: number;
  packs: number;
}

function option(facts: RangeFacts, choice: RangeChoice, years: number, course: Course): RangeOption {
  const { base, rates, usualUnitsPerNeed } = facts;
  const perYear = (value: number) => figure(years > 0 ? value / years : 0);
  const sessions = usesPerYear(facts.demand) * years;
  return {
    choice,
    costPerYearMinor: perYear(course.costMinor),
    costPerUsedUnitMinor: course.usedUnits > 0 ? figure(course.costMinor / course.usedUnits) : null,
    costPerSessionMinor: sessions > 0 ? figure(course.costMinor / sessions) : null,
    purchasesMinorPerYear: perYear(course.packs * base.packUnits * rates.unitMinor),
    deliveriesPerYear: perYear(course.orders),
    wasteUnitsPerYear: perYear(course.wastedUnits),
    wasteMinorPerYear: perYear(course.wastedMinor),
    unmetSessionsPerYear: perYear(usualUnitsPerNeed > 0 ? course.unmetUnits / usualUnitsPerNeed : 0),
  };
}

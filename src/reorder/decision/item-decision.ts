import { ASSUMED_UNITS } from '../item.js';
import { type CostRates, type ItemStock, NEVER, type OrderPolicy } from '../projection/item-facts.js';
import { chanceShortBefore, type Outcome } from '../projection/outcome.js';
import { Simulation } from '../projection/simulate.js';
import { stockPosition } from '../projection/stock-position.js';
import { daysWithin } from '../supply/lead-time.js';
import { packPriceMinor } from '../supply/pack-cost.js';
import { type AppointmentOrder, isMissingBeforeDelivery, orderForBooked } from './appointment-order.js';
import { basketFigures, figuresOfAppointment } from './basket-figures.js';
import { orderNothing } from './batch-cost.js';
import { coverDays, coverDaysWith } from './cover-days.js';
import type { ItemDecisionFacts, ItemOffer } from './decision-facts.js';
import type { DecisionAssumption, DecisionNote } from './decision-notes.js';
import { meanNeedPerDay } from './drawn-needs.js';
import { expectedCost } from './expected-cost.js';
import { expectedNeed, sumOfNeed } from './expected-need.js';
import { explain } from './explanation.js';
import { figure } from './figure.js';
import type {
  BasketFigures,
  ItemDecision,
  NeighbourCost,
  Outlook,
  PlannedOrder,
  RangeComparison,
  ReorderPoint,
  ShortageCost,
} from './item-decision-result.js';
import type { Candidate } from './order-trials.js';
import { outlookOf } from './outlook.js';
import { dateOfDay } from './plan-days.js';
import { compareRange, isSlow, stakesOf } from './range-decision.js';
import { offerWithinBounds, settingsWithinBounds } from './settings-within-bounds.js';
import { largestNeed } from './shortage-cost.js';
import {
  bestOrderOf,
  coarsePathsOf,
  orderDaysWithin,
  type WeighedOffer,
  type WeighedShortage,
  weighOffers,
} from './weigh-offers.js';

/** An order further off than this is not announced: much will have changed by then. */
const announcedDays = 90;
/** A share of the need that is no reason to order by itself. */
const hardlyAny = 0.05;
/** Days after two deliveries that must be seen at least. */
const shortestLook = 28;

/**
 * What to do about one item: order now, later, for an appointment, let it run out, or nothing, with all figures behind it.
 *
 * @throws RangeError when stock, draws or an offer hold what is no whole number within bounds
 */
export function decideItem(given: ItemDecisionFacts): ItemDecision {
  const { settings, assumptions } = settingsWithinBounds(given.settings);
  const notes: DecisionNote[] = [];
  const facts = { ...given, settings, horizonDays: horizonBeyondDelivery(given) };
  const { draws, stock, horizonDays, plannedOn } = facts;
  if (facts.onHoldUnits > 0) notes.push({ code: 'on hold ignored', units: facts.onHoldUnits });
  assumptions.push({ code: 'looked ahead', horizonDays, tailDays: draws.days - horizonDays });

  const usualUnits = usualUnitsPerNeed(facts, assumptions);
  const offers = usableOffers(facts, notes, assumptions);
  const unitMinor = unitCost(stock, offers, assumptions);
  const nothingRates = { unitMinor, orderMinor: 0, shortageMinor: 0, holdingMinorPerDay: 0 };
  const horizon = { days: horizonDays, tailDays: draws.days - horizonDays };
  const nothing = new Simulation(stock, null, draws, nothingRates, horizon).evaluate(orderNothing);
  const without = outlookOf(nothing, coverDays(facts), plannedOn);
  const isNeeded = meanNeedPerDay(draws) > 0;
  if (!isNeeded) notes.push({ code: 'no need' });
  if (offers.length === 0) {
    return withoutOffer(facts, notes, assumptions, nothing, without, usualUnits, isNeeded);
  }

  const { weighed, shortage } = weighOffers(facts, settings, offers, unitMinor, usualUnits, nothing);
  const [cheapest] = weighed;
  if (cheapest === undefined) throw new RangeError('No offer was weighed.');
  const chosen = bestOrderOf(facts, cheapest);
  weighed[0] = chosen;
  const { paths } = chosen.search.simulation.draws;
  const { base, rates, offer } = chosen;
  const range = rangeOf(facts, chosen, usualUnits);
  const idle = evaluate(chosen, orderNothing, paths);
  const nothingCost = expectedCost(idle, rates, base.left);
  const line = decide(facts, chosen, range, idle, nothingCost.totalMinor, isNeeded);

  const { order, policy } = line;
  const outcome = line.outcome ?? evaluate(chosen, policy, paths);
  const cover =
    line.orderDay === null || order === null
      ? coverDays(facts)
      : coverDaysWith(facts, offer.replenishment, { day: line.orderDay, packs: order.packs });
  const after = outlookOf(outcome, cover, plannedOn);
  pushNotes(notes, facts, chosen, line, outcome, isNeeded);
  assumptions.push({
    code: 'delivery shared',
    lines: offer.linesPerDelivery,
    shareMinor: figure(offer.deliveryCostMinor / offer.linesPerDelivery),
  });

  const decision: Omit<ItemDecision, 'reasons'> = {
    decision: line.decision,
    order,
    without,
    after,
    costs: {
      chosen: expectedCost(outcome, rates, base.left),
      neighbours: line.candidate === null || order === null ? [] : neighbours(facts, chosen, line.candidate),
      nothing: nothingCost,
    },
    basketFigures: figuresForBasket(facts, chosen, line, isNeeded),
    offers: weighed.map((each) => ({
      offerId: each.offer.offerId,
      productId: each.offer.productId,
      supplierId: each.offer.supplierId,
      packs: each.best.packs,
      on: dateOfDay(plannedOn, each.orderDays[each.best.dayIndex] ?? 0),
      expectedCostMinor: figure(each.best.costMinor),
    })),
    range,
    reorderPoint: line.isKept ? reorderPointOf(chosen) : null,
    shortage: shortageOf(shortage, usualUnits),
    effort: {
      candidates: sumOfCandidates(weighed),
      coarsePaths: coarsePathsOf(draws),
      paths,
      horizonDays,
      tailDays: draws.days - horizonDays,
    },
    notes,
    assumptions,
    policy: { ...policy, offerId: offer.offerId },
  };
  return { ...decision, reasons: explain(facts, decision, offer.replenishment, line.booked) };
}

/** Long enough that what an order brings is seen: a delivery that takes longer than the horizon would serve nobody. */
function horizonBeyondDelivery({ horizonDays, offers, draws }: ItemDecisionFacts): number {
  let days = horizonDays;
  for (const { replenishment } of offers) {
    const { leadTime, nextOrderDay } = replenishment;
    const wanted = 2 * daysWithin(leadTime, 0.95) + shortestLook;
    days = Math.max(days, Math.min(wanted, draws.days, nextOrderDay.length));
  }
  // All offers are weighed over the same days.
  for (const { replenishment } of offers) days = Math.min(days, replenishment.nextOrderDay.length);
  return days;
}

interface Line {
  decision: ItemDecision['decision'];
  order: PlannedOrder | null;
  /** The day of the plan is 0; null: nothing is ordered. */
  orderDay: number | null;
  /** What was chosen among the candidates; null: none of them. */
  candidate: Candidate | null;
  policy: OrderPolicy;
  /** What comes of the policy, where that is known already. */
  outcome: Outcome | null;
  /** Whether it is kept in stock, by a reorder point. */
  isKept: boolean;
  /** Who is booked, or owed a touch-up, that it is ordered for; null: nobody. */
  booked: AppointmentOrder | null;
  /** An order for the booked came too late to be sure. */
  isLate: boolean;
  /** What will be missing is missing whatever is ordered. */
  isPastHelp: boolean;
}

function decide(
  facts: ItemDecisionFacts,
  chosen: WeighedOffer,
  range: RangeComparison | null,
  nothing: Outcome,
  nothingMinor: number,
  isNeeded: boolean,
): Line {
  const { base, search, best, orderDays, dueIndex } = chosen;
  const byPoint = { first: null, reorderPointUnits: base.reorderPointUnits, packs: base.packs };
  const none = {
    ...{ order: null, orderDay: null, candidate: null, policy: orderNothing, outcome: null },
    ...{ isKept: false, booked: null, isLate: false, isPastHelp: false },
  };
  if (range?.choice === 'order for the appointment') return forAppointment(facts, chosen);
  if (range?.choice === 'let run out') {
    // Nobody keeps it for those who may come; who is booked already may still be worth an order.
    const isWorthIt =
      range.chosenBy === 'too seldom' || (range.chosenBy === 'cost' && best.costMinor < nothingMinor);
    const booked = isWorthIt ? forAppointment(facts, chosen) : null;
    return booked?.order ? booked : { ...none, decision: 'let run out' };
  }
  const isKeptByHand = range?.chosenBy === 'manager';
  if (!isNeeded) return { ...none, decision: 'enough', isKept: isKeptByHand };
  // Whether what is here and coming has fallen to the reorder point.
  const isDue = stockPosition(facts.stock) <= base.reorderPointUnits;
  let candidate: Candidate = best;
  let followed: Candidate = best;
  if (nothingMinor <= best.costMinor) {
    const { serviceTargetPerMille, shortageCostMinor } = facts.settings;
    const target = serviceTargetPerMille / 1_000;
    const isEnough = nothing.short.mean <= 1 - target && target > 0;
    // What is here lasts for now, and is kept all the same.
    if (isEnough) return { ...none, decision: 'enough', isKept: true };
    const isVain = shortageCostMinor !== null || target <= 0 || base.smallest.usedUnits <= 0;
    if (isVain && !isKeptByHand) return { ...none, decision: 'let run out' };
    // By the target a missing unit costs what one too many does, not what a session is worth that cannot be done: that no
    // order pays by it is no reason not to meet the target.
    candidate = { dayIndex: isDue ? 0 : dueIndex, packs: base.packs };
    followed = candidate;
    // But where hardly more of the need is met by ordering, as when all is on the way and nothing is faster, it is none.
    const ordered = search.trials.of(candidate, search.simulation.draws.paths).outcome;
    const need = nothing.usedUnits.mean + nothing.unmetUnits.mean;
    const spared = nothing.unmetUnits.mean - ordered.unmetUnits.mean;
    const isPastHelp = spared <= Math.min(1 - target, hardlyAny) * need && ordered.unmetUnits.mean > spared;
    if (isPastHelp) return { ...none, decision: 'enough', isKept: true, isPastHelp };
  } else if (range !== null && range.chosenBy !== 'cost' && isDue) {
    // Nor to put it off.
    candidate = { ...best, dayIndex: 0 };
    followed = candidate;
  } else if (best.dayIndex === 0 && orderDays.length > 1) {
    // Waiting for the next order day and looking at the shelf again may be better than any day fixed today.
    const waiting = { dayIndex: 0, packs: 0 };
    const later = search.bestFrom(1);
    if (
      later !== null &&
      search.trials.of(waiting, search.simulation.draws.paths).costMinor < best.costMinor
    ) {
      candidate = later;
      followed = waiting;
    }
  }
  const day = orderDays[candidate.dayIndex] ?? 0;
  if (day > announcedDays) return { ...none, decision: 'enough', candidate, policy: byPoint, isKept: true };
  return {
    decision: day === 0 ? 'order now' : 'order later',
    order: plannedOrder(facts.plannedOn, chosen.offer, candidate.packs, day),
    orderDay: day,
    candidate,
    policy: search.trials.policy(followed),
    outcome: search.trials.of(followed, search.simulation.draws.paths).outcome,
    isKept: true,
    booked: null,
    isLate: false,
    isPastHelp: false,
  };
}

/** Nothing that is not kept, or not needed, is put into a basket. */
function figuresForBasket(
  { plannedOn, draws }: ItemDecisionFacts,
  chosen: WeighedOffer,
  { decision, order, candidate }: Line,
  isNeeded: boolean,
): BasketFigures | null {
  if (!isNeeded || decision === 'let run out') return null;
  if (decision === 'order for the appointment') return order && figuresOfAppointment(chosen, order);
  const own = candidate ?? chosen.best;
  return basketFigures(chosen, own, candidate !== null, plannedOn, coarsePathsOf(draws));
}

function forAppointment(facts: ItemDecisionFacts, chosen: WeighedOffer): Line {
  const { replenishment } = chosen.offer;
  const booked = orderForBooked(
    facts.demand,
    facts.stock,
    replenishment,
    stakesOf(chosen.base, chosen.rates, replenishment),
  );
  if (booked === null || booked.orderDay > announcedDays) {
    return {
      decision: 'order for the appointment',
      order: null,
      orderDay: null,
      candidate: null,
      policy: orderNothing,
      outcome: null,
      isKept: false,
      booked,
      isLate: false,
      isPastHelp: booked === null && isMissingBeforeDelivery(facts.demand, facts.stock, replenishment),
    };
  }
  return {
    decision: 'order for the appointment',
    order: plannedOrder(facts.plannedOn, chosen.offer, booked.packs, booked.orderDay),
    orderDay: booked.orderDay,
    candidate: null,
    policy: { first: { day: booked.orderDay, packs: booked.packs }, reorderPointUnits: null, packs: 0 },
    outcome: null,
    isKept: false,
    booked,
    isLate: booked.late,
    isPastHelp: false,
  };
}

function plannedOrder(plannedOn: string, offer: ItemOffer, packs: number, day: number): PlannedOrder {
  const { offerId, productId, supplierId, replenishment } = offer;
  const { packContainers, unitsEach, prices, leadTime } = replenishment;
  const price = packPriceMinor(prices, packs);
  return {
    offerId,
    productId,
    supplierId,
    packs,
    containers: packs * packContainers,
    units: packs * packContainers * unitsEach,
    packPriceMinor: price,
    priceMinor: price * packs,
    on: dateOfDay(plannedOn, day),
    arrival: {
      likely: dateOfDay(plannedOn, day + daysWithin(leadTime, 0.5)),
      late: dateOfDay(plannedOn, day + daysWithin(leadTime, 0.95)),
    },
  };
}

function evaluate({ search }: WeighedOffer, policy: OrderPolicy, paths: number): Outcome {
  return search.simulation.evaluate(policy, { from: 0, to: paths });
}

function neighbours(facts: ItemDecisionFacts, chosen: WeighedOffer, at: Candidate): NeighbourCost[] {
  const { search, orderDays, base, rates } = chosen;
  const changes = [
    { change: 'one pack less', dayIndex: at.dayIndex, packs: at.packs - 1 },
    { change: 'one pack more', dayIndex: at.dayIndex, packs: at.packs + 1 },
    { change: 'one order day earlier', dayIndex: at.dayIndex - 1, packs: at.packs },
    { change: 'one order day later', dayIndex: at.dayIndex + 1, packs: at.packs },
  ] as const;
  const priced: NeighbourCost[] = [];
  for (const { change, dayIndex, packs } of changes) {
    const day = orderDays[dayIndex];
    if (day === undefined || packs < base.leastPacks) continue;
    const { outcome } = search.trials.of({ dayIndex, packs }, search.simulation.draws.paths);
    priced.push({
      change,
      packs,
      on: dateOfDay(facts.plannedOn, day),
      cost: expectedCost(outcome, rates, base.left),
      expectedUnmetUnits: figure(outcome.unmetUnits.mean),
      expectedWasteUnits: figure(outcome.wastedUnits.mean),
    });
  }
  return priced;
}

function rangeOf(facts: ItemDecisionFacts, chosen: WeighedOffer, usualUnits: number): RangeComparison | null {
  const { demand, draws, settings, horizonDays, stock } = facts;
  const { replenishment } = chosen.offer;
  if (settings.rangeChoice === null && !isSlow(demand, chosen.base)) return null;
  return compareRange({
    replenishment,
    openedLifeDays: stock.openedLifeDays,
    demand,
    draws,
    base: chosen.base,
    rates: chosen.rates,
    horizonDays,
    usualUnitsPerNeed: usualUnits,
    chosen: settings.rangeChoice,
    target: settings.shortageCostMinor === null ? settings.serviceTargetPerMille / 1_000 : null,
    paths: Math.min(1_000, draws.paths),
  });
}

function reorderPointOf({ base, offer }: WeighedOffer): ReorderPoint {
  return {
    units: base.reorderPointUnits,
    // Containers are counted whole, so it is told rather too early; but not as soon as the last bottle is opened, where
    // a tenth of one would do.
    pieces: Math.max(0, Math.ceil(base.reorderPointUnits / offer.replenishment.unitsEach - 0.1)),
    packs: base.packs,
  };
}

function shortageOf({ from, minorPerUnit, oneTooMany }: WeighedShortage, usualUnits: number): ShortageCost {
  return {
    from,
    minorPerUnit: figure(minorPerUnit),
    minorPerNeed: figure(minorPerUnit * usualUnits),
    usualUnitsPerNeed: figure(usualUnits),
    oneTooMany:
      oneTooMany === null
        ? null
        : {
            minor: figure(oneTooMany.minor),
            holdingMinor: figure(oneTooMany.holdingMinor),
            wasteChance: figure(oneTooMany.wasteChance),
            keptDays: figure(oneTooMany.keptDays),
          },
  };
}

/** Offers that have an order day within the horizon, within bounds. */
function usableOffers(
  { offers, horizonDays, plannedOn }: ItemDecisionFacts,
  notes: DecisionNote[],
  assumptions: DecisionAssumption[],
): ItemOffer[] {
  const usable: ItemOffer[] = [];
  for (const each of offers) {
    const { offer, assumptions: taken } = offerWithinBounds(each);
    assumptions.push(...taken);
    if (orderDaysWithin(offer.replenishment.nextOrderDay, horizonDays).length === 0) {
      notes.push({ code: 'no order day', until: dateOfDay(plannedOn, horizonDays - 1) });
      continue;
    }
    usable.push(offer);
  }
  if (offers.length === 0) notes.push({ code: 'no offer' });
  if (usable.some(({ replenishment }) => replenishment.lifeDays >= NEVER)) {
    assumptions.push({ code: 'life on arrival unlimited' });
  }
  return usable;
}

/** The lowest price any offer has, so that no order seems to earn money; without an offer what the stock cost. */
export function unitCost(
  stock: ItemStock,
  offers: readonly ItemOffer[],
  assumptions: DecisionAssumption[],
): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { replenishment } of offers) {
    const { packContainers, unitsEach, prices } = replenishment;
    for (const { packPriceMinor: price } of prices) {
      least = Math.min(least, price / (packContainers * unitsEach));
    }
  }
  if (Number.isFinite(least)) {
    if (stock.batches.some(({ costEachMinor }) => costEachMinor === null)) {
      assumptions.push({ code: 'unit cost from offer', unitMinor: figure(least) });
    }
    return least;
  }
  let minor = 0;
  let units = 0;
  for (const { containers, unitsEach, costEachMinor } of stock.batches) {
    if (costEachMinor === null || unitsEach <= 0) continue;
    minor += containers * costEachMinor;
    units += containers * unitsEach;
  }
  if (units > 0) return minor / units;
  assumptions.push({ code: 'unit cost unknown' });
  return 0;
}

function usualUnitsPerNeed({ demand, item }: ItemDecisionFacts, assumptions: DecisionAssumption[]): number {
  const { units, uses } = sumOfNeed(expectedNeed(demand));
  if (uses > 0 && units > 0) {
    assumptions.push({ code: 'usual amount from expected uses', units: figure(units / uses) });
    return units / uses;
  }
  const assumed = ASSUMED_UNITS[item.unit];
  assumptions.push({ code: 'usual amount unknown', units: assumed });
  return assumed;
}

function pushNotes(
  notes: DecisionNote[],
  facts: ItemDecisionFacts,
  { offer, base, dueDay, dueIndex, orderDays }: WeighedOffer,
  line: Line,
  outcome: Outcome,
  isNeeded: boolean,
): void {
  const { settings, plannedOn, draws } = facts;
  const { prices, minimumPacks, lifeDays, leadTime } = offer.replenishment;
  const lead95 = daysWithin(leadTime, 0.95);
  const { smallest } = base;
  const smallestUnits = smallest.packs * base.packUnits;
  if (isNeeded && lifeDays < NEVER && lead95 > lifeDays) {
    notes.push({ code: 'lead time beyond life', leadTimeDays: lead95, lifeDays });
  }
  if (isNeeded && smallest.usedUnits <= 0) {
    notes.push({ code: 'nothing fits the date', lifeDays: Math.min(lifeDays, draws.days) });
  }
  // A tenth may be left over without a word.
  if (isNeeded && smallest.wastedUnits > smallestUnits * 0.1) {
    const wasteMinor = (smallest.wastedUnits * packPriceMinor(prices, smallest.packs)) / base.packUnits;
    notes.push({
      code: 'pack exceeds need',
      packUnits: smallestUnits,
      inDateNeedUnits: figure(smallestUnits - smallest.wastedUnits),
      expectedWasteUnits: figure(smallest.wastedUnits),
      wasteMinor: figure(wasteMinor),
    });
  }
  if (settings.shortageCostMinor === null && settings.serviceTargetPerMille >= 1_000) {
    notes.push({ code: 'full target bounded', units: largestNeed(base), paths: draws.paths });
  }
  if (settings.shortageCostMinor === null && settings.serviceTargetPerMille <= 0) {
    notes.push({ code: 'target of zero' });
  }
  const { order, candidate } = line;
  if (line.isPastHelp) notes.push({ code: 'no order in time' });
  if (order === null) return;
  const first = prices[0];
  const reached = prices.filter(({ fromPacks }) => fromPacks <= order.packs).at(-1);
  if (first && reached && reached.packPriceMinor < first.packPriceMinor) {
    notes.push({
      code: 'price break taken',
      fromPacks: reached.fromPacks,
      savedMinor: (first.packPriceMinor - reached.packPriceMinor) * order.packs,
    });
  }
  if (minimumPacks > 1 && order.packs === minimumPacks) {
    notes.push({ code: 'minimum packs forced', minimumPacks });
  }
  const day = candidate === null ? null : (orderDays[candidate.dayIndex] ?? null);
  if (day !== null && candidate?.dayIndex === dueIndex && dueDay > day && dueIndex < orderDays.length - 1) {
    notes.push({ code: 'order day forced earlier', wanted: dateOfDay(plannedOn, dueDay), on: order.on });
  }
  const allowed = 1 - settings.serviceTargetPerMille / 1_000;
  const arrives = (orderDays[candidate?.dayIndex ?? 0] ?? 0) + daysWithin(leadTime, 0.5);
  const shortBefore = chanceShortBefore(outcome, arrives);
  if (line.isLate || (day === orderDays[0] && shortBefore > Math.max(allowed, 0.01))) {
    notes.push({ code: 'too late', shortChance: figure(shortBefore), arrival: order.arrival.likely });
  }
}

function sumOfCandidates(weighed: readonly WeighedOffer[]): number {
  let sum = 1;
  for (const { search } of weighed) sum += search.trials.candidates;
  return sum;
}

function withoutOffer(
  facts: ItemDecisionFacts,
  notes: DecisionNote[],
  assumptions: DecisionAssumption[],
  nothing: Outcome,
  without: Outlook,
  usualUnits: number,
  isNeeded: boolean,
): ItemDecision {
  const { draws, horizonDays, settings } = facts;
  const rates: CostRates = { unitMinor: 0, orderMinor: 0, shortageMinor: 0, holdingMinorPerDay: 0 };
  if (settings.shortageCostMinor !== null) rates.shortageMinor = settings.shortageCostMinor / usualUnits;
  const cost = expectedCost(nothing, rates, {
    ...{ unitMinor: 0, needPerDay: 0, lifeDays: NEVER, usableShare: 1 },
  });
  const isEnough = !isNeeded || nothing.short.mean <= 1 - settings.serviceTargetPerMille / 1_000;
  const decision: Omit<ItemDecision, 'reasons'> = {
    decision: isEnough ? 'enough' : 'cannot be ordered',
    order: null,
    without,
    after: without,
    costs: { chosen: cost, neighbours: [], nothing: cost },
    basketFigures: null,
    offers: [],
    range: null,
    reorderPoint: null,
    shortage: {
      from: settings.shortageCostMinor === null ? 'service target' : 'set by hand',
      minorPerUnit: figure(rates.shortageMinor),
      minorPerNeed: figure(rates.shortageMinor * usualUnits),
      usualUnitsPerNeed: figure(usualUnits),
      oneTooMany: null,
    },
    effort: {
      candidates: 1,
      coarsePaths: coarsePathsOf(draws),
      paths: draws.paths,
      horizonDays,
      tailDays: draws.days - horizonDays,
    },
    notes,
    assumptions,
    policy: null,
  };
  return { ...decision, reasons: explain(facts, decision, null, null) };
}

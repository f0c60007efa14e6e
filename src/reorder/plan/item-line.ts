import { orderNothing } from '../decision/batch-cost.js';
import type { ItemDecisionFacts, ItemOffer } from '../decision/decision-facts.js';
import { decideItem } from '../decision/item-decision.js';
import type { ItemDecision, Outlook } from '../decision/item-decision-result.js';
import { type FollowedOrder, followedPolicy, orderOutlook } from '../decision/order-outlook.js';
import type { RangeChoice } from '../decision/range-choice.js';
import type { ItemDemandFacts } from '../demand/demand-facts.js';
import type { DemandModel } from '../demand/demand-model.js';
import {
  type DemandAssumption,
  type DemandDescription,
  demandOfItem,
  expectedWeeks,
  type StudioDemand,
} from '../demand/demand-of-item.js';
import type { ItemKind, ItemUnit } from '../item.js';
import { drawDemand, seedOfItem } from '../projection/demand-draws.js';
import { drawFan, type Fan } from '../projection/fan.js';
import { type DaysDistribution, type ItemStock, NEVER, type OrderPolicy } from '../projection/item-facts.js';
import { orderDays } from '../projection/order-days.js';
import { Simulation } from '../projection/simulate.js';
import { stockPosition } from '../projection/stock-position.js';
import type { PackPrice } from '../supply/pack-price.js';
import { firstDaysOf, HORIZON_DAYS, tailDays } from './item-horizon.js';
import { supposedDemand } from './supposed.js';

/** One way an item can be had. */
export interface PlanOffer {
  offerId: string;
  productId: string;
  supplierId: string;
  packContainers: number;
  unitsEach: number;
  minimumPacks: number;
  prices: readonly PackPrice[];
  leadTime: DaysDistribution;
  /** ISO weekdays; none: any day. */
  orderWeekdays: readonly number[];
  /** NEVER when no date limits it. */
  lifeDays: number;
  deliveryCostMinor: number;
  linesPerDelivery: number;
}

/** All that one item is computed from, beside what the studio's sessions say. Plain data. */
export interface PlanItemFacts {
  kind: ItemKind;
  key: string;
  unit: ItemUnit;
  demand: ItemDemandFacts;
  stock: ItemStock;
  onHoldUnits: number;
  offers: readonly PlanOffer[];
  settings: {
    serviceTargetPerMille: number;
    shortageCostMinor: number | null;
    orderCostMinor: number;
    holdingPerYearPerMille: number;
    rangeChoice: RangeChoice | null;
  };
}

/** What all items of a plan share. */
export interface PlanSetting {
  plannedOn: string;
  seed: number;
  paths: number;
  /** Bookings and what nobody has booked yet, times this; 1000: as they are. */
  bookingsPerMille: number;
}

/** Stock of some evenings at some chances; days count from the day of the plan. */
export interface ShownFan {
  days: number[];
  p5: number[];
  p25: number[];
  p50: number[];
  p75: number[];
  p95: number[];
}

/** What was found out of one item. */
export interface ComputedItem {
  decision: ItemDecision;
  demand: DemandDescription;
  demandAssumptions: DemandAssumption[];
  fanWithout: ShownFan | null;
  fanAfter: ShownFan | null;
}

/** All that the simulation of an item starts from: what is equal gives an equal line. */
export interface PreparedItem {
  facts: PlanItemFacts;
  setting: PlanSetting;
  model: DemandModel;
  demand: DemandDescription;
  demandAssumptions: DemandAssumption[];
}

const fanPaths = 400;

/** Works out what will be needed of an item: the quick part, by which is known whether the rest was done before. */
export function prepareItem(studio: StudioDemand, facts: PlanItemFacts, setting: PlanSetting): PreparedItem {
  const { model, assumptions, description } = demandOfItem(studio, facts.demand, HORIZON_DAYS);
  const supposed = supposedDemand(model, setting.bookingsPerMille);
  return {
    facts,
    setting,
    model: supposed,
    demand: { ...description, weeks: expectedWeeks(supposed).slice(0, Math.ceil(HORIZON_DAYS / 7)) },
    demandAssumptions: assumptions,
  };
}

/** What is to be expected of an item with the order that a basket made of it. */
export interface FollowedItem {
  order: FollowedOrder;
  after: Outlook;
  fan: ShownFan | null;
}

/** Decides on an item. */
export function decidePrepared(prepared: PreparedItem): { decision: ItemDecision; facts: ItemDecisionFacts } {
  const facts = decisionFacts(prepared);
  return { decision: decideItem(facts), facts };
}

function decisionFacts({ facts, setting, model, demand }: PreparedItem): ItemDecisionFacts {
  const { kind, key, unit, stock } = facts;
  const { plannedOn, seed, paths } = setting;
  const days = HORIZON_DAYS + tailOf(facts, unitsPerDay(demand));
  const cut = firstDaysOf(model, days);
  const draws = drawDemand(cut, { paths, seed: seedOfItem(seed, `${kind} ${key}`) });
  return {
    item: { kind, key, unit },
    plannedOn,
    stock,
    onHoldUnits: facts.onHoldUnits,
    offers: facts.offers.map((offer) => offerOf(offer, plannedOn, days)),
    settings: facts.settings,
    demand: cut,
    draws,
    horizonDays: HORIZON_DAYS,
  };
}

/** Decides on an item and draws its fans: the part that takes its time. */
export function computeItem(prepared: PreparedItem): ComputedItem {
  const { demand, demandAssumptions } = prepared;
  const { decision, facts } = decidePrepared(prepared);
  const { policy } = decision;
  return {
    decision,
    demand,
    demandAssumptions,
    fanWithout: fanOf(facts, null, orderNothing),
    fanAfter: policy === null ? null : fanOf(facts, policy.offerId, policy),
  };
}

/** Works out what is to be expected of an item that was decided on, with the order that a basket made of it. */
export function followItem(
  prepared: PreparedItem,
  decided: Pick<ItemDecision, 'reorderPoint' | 'effort'>,
  order: FollowedOrder,
): FollowedItem {
  const facts = decisionFacts(prepared);
  return {
    order,
    after: orderOutlook(facts, decided, order),
    fan: fanOf(facts, order.offerId, followedPolicy(decided, order)),
  };
}

/** @param offerId what is ordered by it; null: nothing is */
function fanOf(
  { stock, draws, offers }: ItemDecisionFacts,
  offerId: string | null,
  policy: OrderPolicy,
): ShownFan | null {
  const offer = offers.find((each) => each.offerId === offerId);
  if (offerId !== null && offer === undefined) return null;
  const free = { unitMinor: 0, orderMinor: 0, shortageMinor: 0, holdingMinorPerDay: 0 };
  // What is shown ends with the horizon.
  const horizon = { days: HORIZON_DAYS, tailDays: 0 };
  const simulation = new Simulation(stock, offer?.replenishment ?? null, draws, free, horizon);
  return shown(drawFan(simulation, policy, Math.min(fanPaths, draws.paths)));
}

function unitsPerDay({ weeks }: DemandDescription): number {
  const units = weeks.reduce(
    (sum, { known, halfKnown, unforeseen }) => sum + known + halfKnown + unforeseen,
    0,
  );
  return weeks.length === 0 ? 0 : units / (7 * weeks.length);
}

function tailOf({ stock, offers }: PlanItemFacts, perDay: number): number {
  const packs = offers.map(
    ({ packContainers, unitsEach, minimumPacks }) => packContainers * unitsEach * minimumPacks,
  );
  const lives = [
    ...stock.batches.map(({ lastDay }) => lastDay),
    ...stock.onTheWay.map(({ lifeDays, arrival }) => Math.min(NEVER, lifeDays + Math.max(...arrival.days))),
    ...offers.map(({ lifeDays, leadTime }) => Math.min(NEVER, lifeDays + Math.max(...leadTime.days))),
  ];
  return tailDays(stockPosition(stock) + Math.max(0, ...packs), perDay, Math.max(0, ...lives));
}

function offerOf(offer: PlanOffer, firstDay: string, days: number): ItemOffer {
  const { offerId, productId, supplierId, deliveryCostMinor, linesPerDelivery, orderWeekdays } = offer;
  const { packContainers, unitsEach, minimumPacks, prices, leadTime, lifeDays } = offer;
  const weekdays = orderWeekdays.length === 0 ? [1, 2, 3, 4, 5, 6, 7] : orderWeekdays;
  const nextOrderDay = orderDays({ firstDay, days, weekdays, closedDates: [] });
  return {
    ...{ offerId, productId, supplierId, deliveryCostMinor, linesPerDelivery },
    replenishment: { packContainers, unitsEach, minimumPacks, prices, leadTime, nextOrderDay, lifeDays },
  };
}

/** Each day of two weeks, then twice a week: more would only be thicker. */
function shown(fan: Fan): ShownFan {
  const days: number[] = [];
  for (let day = 0; day < Math.min(HORIZON_DAYS, fan.at50.length); day += day < 14 ? 1 : 4) days.push(day);
  const at = (values: Int32Array) => days.map((day) => values[day] ?? 0);
  return {
    days,
    p5: at(fan.at5),
    p25: at(fan.at25),
    p50: at(fan.at50),
    p75: at(fan.at75),
    p95: at(fan.at95),
  };
}

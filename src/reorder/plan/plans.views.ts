import type { RangeChoice } from '../decision/range-choice.js';
import type { ItemKind, ItemUnit } from '../item.js';
import type { LineDecision, PlanState } from './vocabulary.js';

/** What was taken for want of something better, with the figures of it. */
export class PlanAssumptionView {
  code: string;
  /** By name; amounts of money in minor units. */
  figures: Record<string, unknown>;
  /** An English sentence. */
  message: string;
  /** How many items it was taken for; null: it is of the whole studio, or of the one line it stands in. */
  items: number | null;
}

/** A reason or a remark: a code, its figures and an English sentence. */
export class PlanReasonView {
  code: string;
  /** By name; nested lists only where the code says so. */
  figures: Record<string, unknown>;
  message: string;
}

/** More or fewer sessions of a procedure on a day than are booked. */
export class ExtraSessionsView {
  procedureId: string;
  on: string;
  /** Negative: so many fewer. */
  sessions: number;
}

/** What is supposed to be different; null: as it is. */
export class WhatIfView {
  /** Only this item is computed. */
  itemKind: ItemKind | null;
  itemKey: string | null;
  serviceTargetPerMille: number | null;
  /** All lead times, times this; 1000: as they are. */
  leadTimePerMille: number | null;
  /** Added to all lead times; negative: so many fewer. */
  leadTimeExtraDays: number | null;
  pricePerMille: number | null;
  /** Bookings and what nobody has booked yet, times this. */
  bookingsPerMille: number | null;
  extraSessions: ExtraSessionsView[];
}

/** A plan in the list of plans. */
export class PlanView {
  id: string;
  /** `replay` only in the answer to ending one: it is not among the plans. */
  purpose: 'plan' | 'what if' | 'replay';
  whatIf: WhatIfView | null;
  state: PlanState;
  /** The studio's local day it starts from. */
  plannedOn: string;
  askedAt: string;
  /** Null: the service by itself, by night. */
  personId: string | null;
  endedAt: string | null;
  /** Why it failed. */
  failure: string | null;
  /** The plan whose lines are shown: all facts were the same. */
  sameAsId: string | null;
  /** Items computed so far, and in all; null: not known yet, or not known any more. */
  itemsDone: number | null;
  items: number | null;
  /** From when it began to run; of one that ended, what it took. */
  runningSeconds: number | null;
  /** Lines with something to order today. */
  dueToday: number | null;
  version: number;
}

export class PlanPageView {
  items: PlanView[];
  /** Give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

export type BasketReasonWord =
  | 'due'
  | 'shares the delivery'
  | 'reaches the minimum'
  | 'reaches free delivery';

/** A line that is ordered with others of the same supplier. */
export class BasketLineView {
  lineNumber: number;
  label: string;
  productId: string;
  offerId: string;
  packs: number;
  /** Packs of the item by itself, 0 when it was not due. */
  ownPacks: number;
  ownOn: string | null;
  packPriceMinor: number;
  priceMinor: number;
  /** Part of the delivery, by price. */
  deliveryShareMinor: number;
  /** Why it is here, or why more packs than its own. */
  reasons: BasketReasonWord[];
  /** Expected extra cost of being here and of being more, and what that spares. */
  extraMinor: number;
  sparedMinor: number;
}

/** What can be done about a minimum that is not reached. */
export class MinimumChoiceView {
  choice: 'order anyway' | 'wait' | 'add';
  missingMinor: number | null;
  until: string | null;
  /** The line to add to. */
  lineNumber: number | null;
  packs: number | null;
  priceMinor: number | null;
  extraMinor: number | null;
}

/** One order to one supplier on one day. */
export class BasketView {
  supplierId: string;
  supplierName: string;
  on: string;
  lines: BasketLineView[];
  goodsMinor: number;
  deliveryMinor: number;
  totalMinor: number;
  currency: string;
  minimumState: 'none' | 'reached' | 'reached by adding' | 'not reached';
  minimumMinor: number | null;
  minimumMissingMinor: number;
  minimumChoices: MinimumChoiceView[];
  /** Null: delivery is never free. */
  freeDeliveryFromMinor: number | null;
  freeDeliveryMissingMinor: number | null;
}

export class DecisionCountView {
  decision: LineDecision;
  lines: number;
}

/** What a plan comes to. */
export class PlanSumsView {
  lines: number;
  decisions: DecisionCountView[];
  currency: string;
  /** Of what is to be ordered today, without and with delivery. */
  orderTodayMinor: number;
  orderTodayWithDeliveryMinor: number;
  /** Over the days looked ahead, if the plan is followed. */
  expectedWasteMinor: number;
  /** Containers that are held, and left out. */
  heldContainers: number;
  /** Items of the register that nobody used, has, offers or lists in a kit. */
  itemsLeftOut: number;
  /** Policies that were tried on all items. */
  candidates: number;
  /** Lines taken over from an earlier plan, since their facts were the same. */
  linesTakenOver: number;
  paths: number;
  days: number;
}

/** One plan whole, without its lines. */
export class PlanDetailView extends PlanView {
  /** Null: not done. */
  sums: PlanSumsView | null;
  baskets: BasketView[];
  assumptions: PlanAssumptionView[];
}

/** How an item is named. */
export class PlannedItemView {
  kind: ItemKind;
  /** A product id, or the key of a configuration. */
  key: string;
  unit: ItemUnit;
  /** As people call it. */
  label: string;
  /** One, or all that stand for each other. */
  productIds: string[];
  productName: string | null;
  shade: string | null;
  makerName: string | null;
}

/** The days of stock at some chances: of each day that is shown, what is usable at its end. */
export class FanView {
  days: string[];
  p5: number[];
  p25: number[];
  p50: number[];
  p75: number[];
  p95: number[];
}

/** How a method of forecasting did and counts. */
export class MethodWeightView {
  method: string;
  weight: number;
  /** Mean logarithmic score of having foretold the past, negated: smaller is better; null: nothing could be scored. */
  score: number | null;
}

/** What will be needed. */
export class LineDemandView {
  /** Expected units over the days looked ahead. */
  knownUnits: number;
  halfKnownUnits: number;
  unforeseenUnits: number;
  unitsPerWeek: number;
  /** smooth, erratic, intermittent or lumpy; null: too little is known. */
  seriesClass: string | null;
  averageDemandInterval: number | null;
  sizeVariation: number | null;
  methods: MethodWeightView[];
  /** Weeks with and without use that were looked at. */
  weeksOfHistory: number;
  /** Expected units by day from the day of the plan, booked and owed apart from the rest. */
  byWeek: DemandWeekView[];
}

/** The need expected of one week. */
export class DemandWeekView {
  from: string;
  knownUnits: number;
  halfKnownUnits: number;
  unforeseenUnits: number;
}

export class DaysToArrivalView {
  /** Days and how likely each is. */
  days: number[];
  weights: number[];
  meanDays: number;
  /** Nineteen of twenty orders take no longer. */
  days95: number;
}

/** How it can be had. */
export class LineSupplyView {
  supplierId: string | null;
  supplierName: string | null;
  offerId: string | null;
  productId: string | null;
  packContainers: number | null;
  /** Units in each container. */
  containerUnits: number | null;
  minimumPacks: number | null;
  packPriceMinor: number | null;
  unitPriceMinor: number | null;
  currency: string | null;
  leadTime: DaysToArrivalView | null;
  lifeOnArrivalDays: number | null;
  /** Other offers that were tried. */
  otherOffers: number;
}

/** What is here of it. */
export class LineStockView {
  usableUnits: number;
  containers: number;
  opened: number;
  /** Held, and left out. */
  heldContainers: number;
  heldUnits: number;
  /** Expired or open too long, and left out. */
  expiredContainers: number;
  practiceContainers: number;
  onTheWayUnits: number;
  /** The last day of what ends first. */
  nextLastDay: string | null;
}

/** The days by which running short has come about with 5, 50 and 95 %; null: less likely than that. */
export class ShortOnView {
  early: string | null;
  middle: string | null;
  late: string | null;
}

/** What is to be expected within the days looked ahead, by the paths drawn. */
export class LineOutlookView {
  /** The last day looked at. */
  until: string;
  /** That something needed is missing at least once, 0 to 1. */
  shortChance: number;
  shortOn: ShortOnView;
  expectedUnmetUnits: number;
  /** What expires or is discarded, of what is here, coming and ordered; also after `until`. */
  expectedWasteUnits: number;
  expectedWasteMinor: number;
  /** Days that what is here and coming (and ordered first) is expected to last without a later order. */
  coverDays: number;
}

/** An expected cost and its parts, in minor units, not whole. */
export class LineCostView {
  totalMinor: number;
  wasteMinor: number;
  shortageMinor: number;
  orderMinor: number;
  holdingMinor: number;
  /** What the packs cost more (or less) than at the price of comparison. */
  priceMinor: number;
  /** What is left at the end spares a part of a later order: at most 0. */
  leftMinor: number;
  standardErrorMinor: number;
}

/** What another choice would cost. */
export class NeighbourView {
  change: 'one pack less' | 'one pack more' | 'one order day earlier' | 'one order day later';
  packs: number;
  on: string;
  cost: LineCostView;
  /** Against what was chosen. */
  extraMinor: number;
  expectedUnmetUnits: number;
  expectedWasteUnits: number;
}

/** An offer that was weighed. */
export class OfferComparisonView {
  offerId: string;
  productId: string;
  supplierId: string;
  supplierName: string;
  /** Of the best that can be done with it. */
  packs: number;
  on: string | null;
  expectedCostMinor: number;
}

/** What one missing unit costs, and where that comes from. */
export class ShortageCostView {
  from: 'set by hand' | 'service target';
  minorPerUnit: number;
  /** Of one usual need. */
  minorPerNeed: number;
  usualUnitsPerNeed: number;
}

/** One way of keeping a shade, with what it comes to in a year, from an empty shelf on. */
export class RangeChoiceView {
  choice: RangeChoice;
  costPerYearMinor: number;
  /** Null where nothing would be used. */
  costPerUsedUnitMinor: number | null;
  /** Of one session that wants it, whether it gets it or not. */
  costPerSessionMinor: number | null;
  purchasesMinorPerYear: number;
  deliveriesPerYear: number;
  wasteUnitsPerYear: number;
  wasteMinorPerYear: number;
  unmetSessionsPerYear: number;
}

export class RangeDecisionView {
  /** What counts. */
  choice: RangeChoice;
  /** What the figures say; the manager's own choice wins over it. */
  advised: RangeChoice;
  /**
   * Service target: the way that costs least of those that meet it. Too seldom: fewer than one use is expected while a pack
   * keeps, so it is not kept. Cost: the way that costs least of all.
   */
  chosenBy: 'manager' | 'service target' | 'too seldom' | 'cost';
  sessionsPerYear: number;
  /** Share of uses that are booked early enough to order for them. */
  bookedInTime: number;
  appointmentPossible: boolean;
  options: RangeChoiceView[];
}

/** What it took to decide. */
export class EffortView {
  /** Orders weighed against each other, of all offers. */
  candidates: number;
  coarsePaths: number;
  paths: number;
  horizonDays: number;
  tailDays: number;
}

/** The reorder point, as stock's levels would have it. */
export class LineLevelView {
  /** Pieces: containers of a bottle. Null: nothing sensible can be said. */
  minimumPieces: number | null;
  /** As it stands; null: none is set. */
  currentPieces: number | null;
  /** True: somebody set it by hand, and the plan leaves it unless it is named. */
  setByHand: boolean;
}

/** What a plan says of an item, in a list. */
export class PlanLineSummaryView {
  lineNumber: number;
  item: PlannedItemView;
  decision: LineDecision;
  orderOn: string | null;
  /** Half of such deliveries are there by then, and 95 % by `arrivesLate`. */
  arrivesOn: string | null;
  arrivesLate: string | null;
  supplierId: string | null;
  supplierName: string | null;
  offerId: string | null;
  productId: string | null;
  packs: number;
  containers: number;
  /** Units of what is ordered. */
  orderedUnits: number;
  costMinor: number | null;
  currency: string | null;
  /** What it costs not to follow the line: by this lines are ordered. */
  stakeMinor: number;
  usableUnits: number;
  onTheWayUnits: number;
  unitsPerWeek: number;
  /** If nothing is ordered, 0 to 1. */
  shortChance: number;
  shortOn: ShortOnView;
  /** If the plan is followed. */
  shortChanceAfter: number;
  expectedWasteMinor: number;
  /** Days that what is here and coming is expected to last. */
  coverDays: number;
  /** One sentence. */
  sentence: string;
  /** Codes of what is worth a look. */
  notes: string[];
  level: LineLevelView;
}

export class PlanLinePageView {
  planId: string;
  items: PlanLineSummaryView[];
  /** Give it as `afterLine` for the next page; null: this is the last. */
  next: number | null;
}

/** What an item would order if no basket changed it. */
export class OwnOrderView {
  packs: number;
  on: string | null;
  expectedUnmetUnits: number;
  expectedWasteUnits: number;
}

/** A line whole. */
export class PlanLineView extends PlanLineSummaryView {
  demand: LineDemandView;
  supply: LineSupplyView;
  stock: LineStockView;
  /** If nothing more is ordered. */
  without: LineOutlookView;
  /** With the order, and later ones by the reorder point. */
  after: LineOutlookView;
  fanWithout: FanView | null;
  fanAfter: FanView | null;
  /** The order it would be by itself, to which the costs belong; null: it is ordered as it would be by itself. */
  byItself: OwnOrderView | null;
  costChosen: LineCostView;
  costOfNothing: LineCostView;
  neighbours: NeighbourView[];
  offers: OfferComparisonView[];
  shortageCost: ShortageCostView;
  effort: EffortView;
  range: RangeDecisionView | null;
  reasons: PlanReasonView[];
  remarks: PlanReasonView[];
  assumptions: PlanAssumptionView[];
  serviceTargetPerMille: number;
  /** The plan this line was taken over from; null: it was computed for this one. */
  takenOverFromId: string | null;
}

/** A minimum before and after it was taken from a plan. */
export class LevelTakenView {
  lineNumber: number;
  subjectKind: ItemKind;
  subjectId: string;
  label: string;
  /** Null: none was set. */
  before: number | null;
  after: number;
  outcome: 'set' | 'unchanged' | 'left, since it was set by hand';
}

export class LevelsTakenView {
  planId: string;
  items: LevelTakenView[];
}

import type { LineDecision } from '../plan/vocabulary.js';
import type { OrderPolicy } from '../projection/item-facts.js';
import type { PackPrice } from '../supply/pack-price.js';
import type { DecisionAssumption, DecisionNote } from './decision-notes.js';
import type { Reason } from './explanation.js';
import type { RangeChoice } from './range-choice.js';

/*
 * What a plan says of one item, as it is kept and shown: plain data, every figure finite. Amounts are units of the item
 * (pieces or microlitres), money is in minor units of the studio's currency and may be a fraction where it is an
 * expectation, days are ISO dates of the studio, chances are 0 to 1.
 */

export interface ItemDecision {
  decision: LineDecision;
  /** What is ordered, or will be; null: nothing. */
  order: PlannedOrder | null;
  /** If nothing more is ordered. */
  without: Outlook;
  /** With the order, and later ones by the reorder point. */
  after: Outlook;
  costs: {
    chosen: ExpectedCost;
    /** What one pack less or more, and one order day earlier or later, would cost. */
    neighbours: NeighbourCost[];
    /** Ordering nothing at all. */
    nothing: ExpectedCost;
  };
  /** Every offer that was weighed, the cheapest first. */
  offers: OfferComparison[];
  /** What ordering on other days or in other amounts costs, for the supplier's basket; null: there is no offer. */
  basketFigures: BasketFigures | null;
  /** For slow items: the three ways of keeping one, with their cost; null: the item is used too often to ask. */
  range: RangeComparison | null;
  /** Null: the item is not kept in stock. */
  reorderPoint: ReorderPoint | null;
  shortage: ShortageCost;
  effort: Effort;
  notes: DecisionNote[];
  assumptions: DecisionAssumption[];
  /** Why, in the order in which it is said. */
  reasons: Reason[];
  /** The policy behind `after`, for the fan of the projection; null: there is no offer. */
  policy: (OrderPolicy & { offerId: string }) | null;
}

export interface PlannedOrder {
  offerId: string;
  productId: string;
  supplierId: string;
  packs: number;
  containers: number;
  units: number;
  /** Of one pack at this number of packs, and of all packs. */
  packPriceMinor: number;
  priceMinor: number;
  /** The day it is ordered. */
  on: string;
  /** Half of such deliveries are there by `likely`, 95 % by `late`. */
  arrival: { likely: string; late: string };
}

/** What is to be expected within the horizon. */
export interface Outlook {
  /** The last day looked at. */
  until: string;
  /** That something needed is missing at least once. */
  shortChance: number;
  /** The day by which running short has come about with 5, 50 and 95 %; null: less likely than that by `until`. */
  shortOn: { early: string | null; middle: string | null; late: string | null };
  expectedUnmetUnits: number;
  /** What expires or is discarded, of what is here, coming and ordered; also after `until`. */
  expectedWasteUnits: number;
  expectedWasteMinor: number;
  /**
   * Days that what is here and coming (and ordered first) is expected to last without a later order; what is missing
   * before an order can arrive does not end them.
   */
  coverDays: number;
}

/** Expected cost of a candidate and its parts; `total` is their sum. */
export interface ExpectedCost {
  totalMinor: number;
  wasteMinor: number;
  shortageMinor: number;
  orderMinor: number;
  holdingMinor: number;
  /** What the packs cost more (or less) than at the price of comparison. */
  priceMinor: number;
  /** What is left at the end spares a part of a later order: at most 0. */
  leftMinor: number;
  /** Monte Carlo standard error of the total. */
  standardErrorMinor: number;
}

export interface NeighbourCost {
  change: 'one pack less' | 'one pack more' | 'one order day earlier' | 'one order day later';
  packs: number;
  on: string;
  cost: ExpectedCost;
  expectedUnmetUnits: number;
  expectedWasteUnits: number;
}

export interface OfferComparison {
  offerId: string;
  productId: string;
  supplierId: string;
  /** Of the best that can be done with it. */
  packs: number;
  on: string | null;
  expectedCostMinor: number;
}

/** From these a supplier's basket is put together: what moving and adding costs beyond what is best for the item alone. */
export interface BasketFigures {
  offerId: string;
  productId: string;
  supplierId: string;
  /** Ordered by itself, or what would be ordered if it joined a basket. */
  packs: number;
  packPrices: readonly PackPrice[];
  /** By rising day, the last is its own: what ordering `packs` on it costs more than on its own. */
  days: { on: string; extraMinor: number }[];
  /** Days after its own, by rising day. */
  laterDays: { on: string; extraMinor: number }[];
  /** On its own day: what so many packs cost more than `packs`. */
  morePacks: { packs: number; extraMinor: number }[];
}

export interface ReorderPoint {
  /** Ordered when what is here and coming falls to so many units. */
  units: number;
  /** The same as pieces or containers, as stock's levels count them. */
  pieces: number;
  /** Of a later order. */
  packs: number;
}

/** What one missing unit costs, and where that comes from. */
export interface ShortageCost {
  from: 'set by hand' | 'service target';
  minorPerUnit: number;
  /** Of one usual need. */
  minorPerNeed: number;
  usualUnitsPerNeed: number;
  /** One unit too many: what it costs to keep, and the chance that it is wasted; null when set by hand. */
  oneTooMany: { minor: number; holdingMinor: number; wasteChance: number; keptDays: number } | null;
}

export interface Effort {
  /** Orders weighed against each other, of all offers. */
  candidates: number;
  /** Of the coarse and of the last look. */
  coarsePaths: number;
  paths: number;
  horizonDays: number;
  tailDays: number;
}

export interface RangeComparison {
  /** What counts. */
  choice: RangeChoice;
  /** What the figures say; the manager's own choice wins over it. */
  advised: RangeChoice;
  /**
   * Service target: the way that costs least of those that meet it. Too seldom: fewer than one use is expected while a pack
   * keeps, so it is not kept. Cost: the way that costs least of all.
   */
  chosenBy: 'manager' | 'service target' | 'too seldom' | 'cost';
  /** Uses a year that are to be expected. */
  sessionsPerYear: number;
  /** Share of uses that are booked early enough to order for them. */
  bookedInTime: number;
  /** Whether there is such a share: what it leaves unmet is in the cost. */
  appointmentPossible: boolean;
  options: RangeOption[];
}

/** What keeping an item in one way costs in a year, from an empty shelf on. */
export interface RangeOption {
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

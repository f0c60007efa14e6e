import type { DemandModel } from '../demand/demand-model.js';
import type { Item } from '../item.js';
import type { DemandDraws } from '../projection/demand-draws.js';
import type { ItemStock, Replenishment } from '../projection/item-facts.js';
import type { RangeChoice } from './range-choice.js';

/** How an item can be had from one supplier. */
export interface ItemOffer {
  offerId: string;
  productId: string;
  supplierId: string;
  replenishment: Replenishment;
  /** What the supplier asks for one delivery, minor units. */
  deliveryCostMinor: number;
  /** How many lines usually share a delivery of this supplier, at least 1. */
  linesPerDelivery: number;
}

/** How an item is planned; all values in force, whether set or assumed. */
export interface DecisionSettings {
  /** Share of the need that should be met, 0 to 1000. */
  serviceTargetPerMille: number;
  /** Cost of one unmet need (a session that could not have the item) when it is set by hand; null: by the target. */
  shortageCostMinor: number | null;
  /** Of placing and putting away one order, without delivery. */
  orderCostMinor: number;
  /** Cost of holding stock for a year, of its price, per mille. */
  holdingPerYearPerMille: number;
  /** What the manager chose; null: what costs least. */
  rangeChoice: RangeChoice | null;
}

/** All that a decision on one item is made from. */
export interface ItemDecisionFacts {
  item: Item;
  /** Local day 0, ISO. */
  plannedOn: string;
  /** What may be used and what is coming; without what is on hold, expired or for practice. */
  stock: ItemStock;
  /** Units that lie here on hold: they do not count, and it is said. */
  onHoldUnits: number;
  offers: readonly ItemOffer[];
  settings: DecisionSettings;
  demand: DemandModel;
  /** Drawn from `demand`; the first paths serve for coarse looks. */
  draws: DemandDraws;
  /**
   * Days in which orders are placed and what is missing counts; the days of `demand` after them are the tail, in which
   * what is left is used or expires.
   */
  horizonDays: number;
}

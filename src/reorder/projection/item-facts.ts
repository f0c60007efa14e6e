import type { PackPrice } from '../supply/pack-price.js';

/** A last day that never comes. */
export const NEVER = 0x3fff_ffff;

/**
 * Equal containers. Pieces lie in them one by one: `unitsEach` 1 and as many containers as pieces. Days are counted from
 * the day of the plan; a container may be used through its last day.
 */
export interface Batch {
  containers: number;
  /** What is in each; of an opened one, what is left by the book. */
  unitsEach: number;
  /** By label, or, of an opened one, by whichever of label and opened life ends first; NEVER when no date is known. */
  lastDay: number;
  opened: boolean;
  /**
   * What the units in each cost, in minor units: of an opened one, their share of its price; null: unknown, and the
   * rate of a unit is taken.
   */
  costEachMinor: number | null;
}

/** How likely it is that something takes so many days, by rising days; the weights add up to 1. */
export interface DaysDistribution {
  days: readonly number[];
  weights: readonly number[];
}

/** Ordered already, not here yet. */
export interface OnTheWay {
  containers: number;
  unitsEach: number;
  /** From the day of the plan. */
  arrival: DaysDistribution;
  /** Days it may be used from its arrival, the day itself not counted; NEVER when no date is known. */
  lifeDays: number;
}

/** What is here and what is coming of one item. */
export interface ItemStock {
  batches: readonly Batch[];
  onTheWay: readonly OnTheWay[];
  /** Days a container may be used once it was opened; NEVER when nothing limits it, and for pieces. */
  openedLifeDays: number;
}

/** How more of an item can be had. */
export interface Replenishment {
  /** Containers and units of one pack. */
  packContainers: number;
  unitsEach: number;
  minimumPacks: number;
  prices: readonly PackPrice[];
  leadTime: DaysDistribution;
  /** Of each day: the first day on or after it on which an order can be placed; NEVER when there is none. */
  nextOrderDay: Int32Array;
  /** Days it may be used from its arrival; NEVER when no date is known. */
  lifeDays: number;
}

/** What things cost, in minor units; whole or not. */
export interface CostRates {
  /** Of one unit, for what is wasted and what is held. */
  unitMinor: number;
  /** Of one order for this item: its own cost and its share of the delivery. */
  orderMinor: number;
  /** Of one unit that is needed and not there. */
  shortageMinor: number;
  /** Of holding one unit for a day. */
  holdingMinorPerDay: number;
}

/** When how much is ordered: perhaps once on a given day, and from then on whenever the position falls to a point. */
export interface OrderPolicy {
  /** Null: nothing but what the reorder point asks for. */
  first: { day: number; packs: number } | null;
  /** Orders are placed when what is here, usable and on the way is at or below it; null: never again. */
  reorderPointUnits: number | null;
  /** Packs of each later order (and more, when the position stays at or below the point). */
  packs: number;
}

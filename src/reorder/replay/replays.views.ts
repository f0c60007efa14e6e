import type { ItemKind, ItemUnit } from '../item.js';
import type { PlanState } from '../plan/vocabulary.js';

/** What came of one way of ordering one item. Money in minor units of the studio's currency. */
export class ReplayOutcomeView {
  /** Days on which something needed was missing, and how much of it in all. */
  shortDays: number;
  unmetUnits: number;
  wasteUnits: number;
  wasteMinor: number;
  orders: number;
  orderedUnits: number;
  /** What was left in the end, and what it would cost anew. */
  endUnits: number;
  endMinor: number;
  /** Waste, shortages, orders and keeping; not the goods themselves. */
  costMinor: number;
}

/** What came of one way of ordering all items. */
export class ReplaySumsView {
  /** Over items: a day on which two were missing counts twice. */
  shortDays: number;
  /** Items that were ever missing. */
  shortItems: number;
  wasteMinor: number;
  orders: number;
  /** What was left in the end would cost so much anew; it is in no cost. */
  endMinor: number;
  costMinor: number;
}

export class FixedLevelsView {
  minimumUnits: number;
  maximumUnits: number;
  /** Whether the minimum is the level that somebody set; else it is 1.5 times the need of a lead time and a week. */
  byHand: boolean;
}

export class ReplayItemView {
  itemKind: ItemKind;
  itemKey: string;
  label: string;
  unit: ItemUnit;
  /** The first day, ISO; later than that of the whole when the item is newer. */
  from: string;
  neededUnits: number;
  fixedLevels: FixedLevelsView;
  plan: ReplayOutcomeView;
  asOrdered: ReplayOutcomeView;
  fixed: ReplayOutcomeView;
}

/** How often a quantity that should have been enough for a week was enough. */
export class ReplayCalibrationView {
  /** 0 to 1. */
  level: number;
  /** Weeks of items that were foretold. */
  forecasts: number;
  /** Of them: how often it was enough. */
  enough: number;
  /** How often it should have been, 0 to 1: units are whole, so it is the level or more. */
  claimed: number;
  /** Of the share that was enough, if forecasts were right and independent. */
  standardError: number;
  verdict: 'as claimed' | 'too seldom' | 'too often' | 'too few to tell';
}

export class ReplayAssumptionView {
  code: string;
  figures: Record<string, number>;
  /** An English sentence. */
  message: string;
}

export class RecordTooShortView {
  recordedDays: number;
  neededDays: number;
}

/** What had come of it if the plan had been followed, beside what was ordered and beside fixed levels. */
export class ReplayResultView {
  /** Null: the record is long enough. Else nothing was replayed. */
  tooShort: RecordTooShortView | null;
  /** The first and the last day, ISO. */
  from: string;
  until: string;
  weeks: number;
  currency: string;
  items: number;
  /** Left out since nobody offers them, and since there are more than are replayed. */
  itemsWithoutOffer: number;
  itemsBeyondLimit: number;
  plan: ReplaySumsView;
  asOrdered: ReplaySumsView;
  fixed: ReplaySumsView;
  /** At most 200, those with the largest difference between the plan and what was ordered first. */
  lines: ReplayItemView[];
  calibration: ReplayCalibrationView[];
  /** Weeks that were foretold, of each item. */
  calibrationWeeks: number;
  assumptions: ReplayAssumptionView[];
  runningSeconds: number;
}

/** A replay that was asked for. */
export class ReplayView {
  id: string;
  state: PlanState;
  /** The day before which it looks back, ISO. */
  plannedOn: string;
  askedAt: string;
  endedAt: string | null;
  /** Why it failed. */
  failure: string | null;
  /** Steps done, and in all; null: not known yet. */
  stepsDone: number | null;
  steps: number | null;
  version: number;
}

export class ReplaysView {
  /** The latest that was asked for, whatever became of it; null: none was. */
  run: ReplayView | null;
  /** The latest that is done; null: none is. */
  done: ReplayView | null;
  /** Of `done`. */
  result: ReplayResultView | null;
}

import type { RecallState } from '../vocabulary.js';
import type { DrillStep } from './drill-steps.js';

/** How well a drill went; shares in per cent, cut to a tenth, null where there was nothing to count. */
export class DrillScoreView {
  /** Uses that lead to a client and a session by a lot that was read or typed, of all uses. */
  tracedPercent: number | null;
  /** Pieces that are accounted for, of all that came in. */
  balancedPercent: number | null;
  /** Containers that were found, of all that were to be found. */
  foundPercent: number | null;
  /** From the opening to the closing; of an open one until now. */
  minutes: number;
}

/** A step of answering a recall, or of rehearsing it. */
export class RecallStepView {
  step: DrillStep;
  /** By the service's clock; null: not done yet. */
  doneAt: string | null;
  /** From what was done before it, cut to a tenth. */
  minutes: number | null;
  personId: string | null;
}

export class RecallStepsView {
  recallId: string;
  startedAt: string;
  endedAt: string | null;
  steps: RecallStepView[];
  /** How it stands, or stood at the closing. Null: this is no drill, or one that was withdrawn. */
  score: DrillScoreView | null;
}

/** A drill, with its score when it is closed. */
export class DrillView {
  recallId: string;
  title: string;
  state: RecallState;
  chainWide: boolean;
  openedAt: string;
  endedAt: string | null;
  /** True: its lot was drawn, else chosen. */
  drawn: boolean;
  /** Null: it is open, or was withdrawn. */
  score: DrillScoreView | null;
}

export class DrillPageView {
  items: DrillView[];
  /** Give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

/** A drill that was opened. */
export class OpenedDrillView {
  recallId: string;
  /** The lot that is rehearsed with. */
  lotId: string;
  /** True: it was drawn; the id of the request is the seed. */
  drawn: boolean;
  /** How many lots it was drawn from; null: it was chosen. */
  drawnFrom: number | null;
}

/** How often a studio rehearses a recall. */
export class DrillScheduleView {
  /** Null: as it likes. */
  everyMonths: number | null;
  /** The day by which the next drill is to be closed; null: none is asked for. */
  nextOn: string | null;
  /** The day from which it is overdue is here: a notice, after a month a warning. */
  due: boolean;
  /** Null: nothing was set yet. */
  version: number | null;
}

/** The schedule as it was set in all studios of a chain. */
export class ChainDrillScheduleView {
  studioIds: string[];
  everyMonths: number | null;
  nextOn: string | null;
}

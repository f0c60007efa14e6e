import type { DrillScoreView } from '../drills/drills.views.js';
import type { ClosingObstacle, ClosingOutcome, RecallKind, RecallState } from '../vocabulary.js';
import type { CountedAs } from './closing-obstacles.js';

export class ObstacleCountView {
  what: CountedAs;
  count: number;
}

/** Something that stands against closing. */
export class ObstacleView {
  obstacle: ClosingObstacle;
  /** So many lots, clients, containers or pieces … */
  count: number;
  /** … of so many. */
  of: number;
  /** The same by kind. */
  counts: ObstacleCountView[];
  /** The same as a sentence, in English. */
  words: string;
}

export class LotFiguresView {
  affected: number;
  notAffected: number;
  undecided: number;
}

/** Clients whom a lot of the recall touched, certainly or possibly, by the latest attempt to tell them. */
export class ClientFiguresView {
  exposed: number;
  reached: number;
  refused: number;
  unreachable: number;
  /** Tried, but neither reached nor given up. */
  triedInVain: number;
  notTried: number;
  /** Erased before they were told: nobody knows any more who they were. */
  erased: number;
}

/** Containers that are to be found, by the latest look for them. */
export class ContainerFiguresView {
  toFind: number;
  found: number;
  notFound: number;
  notLookedFor: number;
}

/** What is still here of affected lots, and was not looked for in vain; volumes are estimates. */
export class RemainingFiguresView {
  containers: number;
  pieces: number;
  microlitres: number;
}

export class BalanceFiguresView {
  lots: number;
  /** Pieces that came in. */
  pieces: number;
  /** Of these, in containers that are not found. */
  missingPieces: number;
  /** Of these, not accounted for by any other reason, such as a count that found fewer. */
  unexplainedPieces: number;
}

export class ClosingFiguresView {
  lots: LotFiguresView;
  clients: ClientFiguresView;
  containers: ContainerFiguresView;
  remaining: RemainingFiguresView;
  balance: BalanceFiguresView;
}

/** Whether a recall can be closed, and what stands against it. */
export class ReadinessView {
  recallId: string;
  kind: RecallKind;
  state: RecallState;
  /** True: nothing stands against closing. A drill can be closed at any time; what was not done shows in its score. */
  ready: boolean;
  obstacles: ObstacleView[];
  figures: ClosingFiguresView;
}

/** A recall or drill that was closed. */
export class ClosingView {
  id: string;
  recallId: string;
  outcome: ClosingOutcome;
  closedAt: string;
  signedBy: string;
  secondSignedBy: string | null;
  /** What stood against closing, and was overridden with a reason. */
  overridden: ClosingObstacle[];
  /** Holds of this recall that stay: what was not disposed of may still not be used. */
  holdsStaying: number;
  /** Standing holds that stay: what arrives later of these lots is still caught. */
  standingHoldsStaying: number;
  /** Of a drill. */
  score: DrillScoreView | null;
}

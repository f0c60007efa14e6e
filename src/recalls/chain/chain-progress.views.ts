import type { ObstacleView } from '../closing/closing.views.js';
import type { RecallKind, RecallState } from '../vocabulary.js';

/** How far one studio of the chain has come, in numbers only. */
export class StudioProgressView {
  studioId: string;
  studioName: string;
  /** Null: this studio has no part in it yet. */
  state: RecallState | null;
  lotsAffected: number;
  lotsUndecided: number;
  containersToFind: number;
  containersFound: number;
  clientsExposed: number;
  /** Reached, refused to be told, or not to be reached by any means. */
  clientsSettled: number;
  /** Pieces accounted for, cut to a tenth of a per cent; null: no pieces came in. */
  balancedPercent: number | null;
  obstacles: ObstacleView[];
}

export class ChainProgressView {
  recallId: string;
  title: string;
  kind: RecallKind;
  studios: StudioProgressView[];
}

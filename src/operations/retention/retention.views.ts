import { ErasureAnswerView, ErasureObstacleView } from '../../clients/erasures.views.js';

/** How a client stands to the end of retention. By reference: who they are does not matter here. */
export class ClientRetentionView {
  clientId: string;
  clientReference: string;
  /** Local day of the last record of a visit; null: never treated. */
  lastRecordOn: string | null;
  /** Last local day of the floor, from the last record or, without one, from when they were added; null: not known. */
  keptThrough: string | null;
  /** Whether they may be erased now on the studio's own motion. Nothing says that they must. */
  erasable: boolean;
  /** What stands against it. */
  obstacles: ErasureObstacleView[];
  /** Sessions that are planned or under way, which stand against it too. */
  openSessionIds: string[];
}

export class ClientRetentionPageView {
  items: ClientRetentionView[];
  /** Give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

export class CarriedOutRetentionView {
  answers: ErasureAnswerView[];
}

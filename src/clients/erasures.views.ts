import type { ErasureGround, ErasureObstacleKind, ErasureOverride } from './erasure-decision.js';

/** What stands against an erasure. */
export class ErasureObstacleView {
  kind: ErasureObstacleKind;
  /** The point of GDPR Art. 17(3) that allows a refusal; null: the studio's own rule. */
  article: string | null;
  /** What was seen, and what to do. */
  message: string;
  /** Last local day, for what ends by itself. */
  keptThrough: string | null;
  /** The lots on hold. */
  lotIds: string[];
  /** What was said against it, so that it no longer stands; null: it stands. */
  overriddenBy: ErasureOverride | null;
}

/**
 * What was answered to a wish for erasure. Kept, and holds nothing personal. A refusal is to be told to the client with
 * its reasons within one month, and that they may complain to a supervisory authority or go to court (GDPR Art. 12(4)).
 */
export class ErasureAnswerView {
  id: string;
  clientId: string;
  clientReference: string;
  ground: ErasureGround;
  answer: 'erased' | 'refused';
  /** All that was found, also what was overridden. */
  obstacles: ErasureObstacleView[];
  recordedAt: string;
  personId: string | null;
}

/** What would be answered now, before anything is said against what stands in the way. Nothing of it is recorded. */
export class ErasurePreviewView {
  clientId: string;
  ground: ErasureGround;
  answer: 'erased' | 'refused';
  obstacles: ErasureObstacleView[];
  /** Visits planned or under way: completed or cancelled first, or nothing is answered. */
  openSessionIds: string[];
  /** Local day of the last record of a visit; null: never treated. */
  lastRecordOn: string | null;
  /** Last local day on which the record must be kept; null: none, or not known. */
  keptThrough: string | null;
}

export class ErasureAnswerPageView {
  items: ErasureAnswerView[];
  /** Give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

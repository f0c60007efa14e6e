import { HealedResultView } from './session-record.views.js';
import type { SessionState, VisitKind } from './vocabulary.js';

export class TouchUpWindowView {
  /** Local days, YYYY-MM-DD; both belong to the window. */
  opensOn: string;
  closesOn: string;
}

export class TouchUpObstacleView {
  obstacle: 'held' | 'finished' | 'practice only' | 'expired' | 'open too long';
  message: string;
}

/** A pigment of the earlier visit, and whether it can be used again on the first and on the last day of the window. */
export class PigmentAtTouchUpView {
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  lotId: string;
  lotCode: string | null;
  containerId: string;
  /** Null when it was given as a volume. */
  drops: number | null;
  /** An estimate. */
  microlitres: number;
  usableAtStart: 'yes' | 'no' | 'no date known';
  usableAtEnd: 'yes' | 'no' | 'no date known';
  /** Last usable local day; null when no date is known. */
  lastDay: string | null;
  /** Whose opened life was counted. */
  openedLifeFrom: 'label' | 'assumed' | 'sending studio' | 'none';
  /** Empty when nothing stands against it. */
  whyNot: TouchUpObstacleView[];
  /** Other containers of the same lot that can be used on the first day of the window. */
  otherContainerIds: string[];
}

export class MixAtTouchUpView {
  id: string;
  label: string;
  parts: PigmentAtTouchUpView[];
}

export class InstrumentOfVisitView {
  productId: string;
  makerName: string;
  productName: string;
  pieces: number;
}

export class FollowingVisitView {
  sessionId: string;
  visitKind: VisitKind;
  state: SessionState;
  plannedStart: string | null;
  completedAt: string | null;
}

/** What an earlier visit leaves to its touch-up. */
export class TouchUpView {
  /** The earlier visit. */
  sessionId: string;
  clientId: string;
  artistId: string;
  procedureId: string;
  procedureName: string;
  visitKind: VisitKind;
  /** Local day, YYYY-MM-DD. */
  completedOn: string;
  window: TouchUpWindowView;
  mixes: MixAtTouchUpView[];
  /** Pigments used by themselves, in no mix. */
  pigments: PigmentAtTouchUpView[];
  instruments: InstrumentOfVisitView[];
  /** How the colour healed, once it was looked at. */
  healedResult: HealedResultView | null;
  /** Visits that follow this one. */
  visits: FollowingVisitView[];
}

import type { ObstacleView } from '../closing/closing.views.js';
import { ClosingFiguresView } from '../closing/closing.views.js';
import type { DrillScoreView, RecallStepView } from '../drills/drills.views.js';
import type {
  ClosingObstacle,
  ContactAudience,
  DispositionKind,
  LotDecision,
  NoticeSource,
  RecallKind,
  RecallState,
} from '../vocabulary.js';

export class ReportStudioView {
  id: string;
  name: string;
  timeZone: string;
}

export class ReportRecallView {
  id: string;
  title: string;
  kind: RecallKind;
  state: RecallState;
  chainWide: boolean;
  openedAt: string;
  openedBy: string | null;
  endedAt: string | null;
}

/** What the recall was about, as it was said at one time. */
export class ReportScopeView {
  number: number;
  recordedAt: string;
  personId: string | null;
  /** Why it was amended; null for the first. */
  reason: string | null;
  issuer: string | null;
  reference: string | null;
  issuedOn: string | null;
  classification: string | null;
  risk: string | null;
  remedy: string | null;
  noticeSource: NoticeSource | null;
  /** SHA-256 of the notice's text as it was kept. */
  noticeDigest: string | null;
  /** Each product with its lots, as a sentence in English. */
  words: string[];
}

export class ReportEventView {
  /** By the service's clock. */
  at: string;
  event: string;
  /** In English. */
  words: string;
  /** Null: several, or the service itself. */
  personId: string | null;
}

export class ReportDecisionView {
  decision: LotDecision;
  reason: string;
  at: string;
  personId: string | null;
}

export class ReportLotView {
  lotId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  code: string | null;
  useBy: string | null;
  grade: 'certain' | 'possible';
  /** Why, in English. */
  reasons: string[];
  standing: 'affected' | 'not affected' | 'undecided';
  /** The latest decision on what was only possible. */
  decision: ReportDecisionView | null;
}

/** A session in which a lot of the recall touched a client. */
export class ReportExposureView {
  clientId: string;
  clientReference: string;
  sessionId: string;
  /** The studio's local day. */
  day: string;
  visitKind: string;
  bodyPlace: string;
  lotId: string;
  lotCode: string | null;
  productName: string;
  shade: string | null;
  certainty: 'certain' | 'possible';
  /** As itself, within a house blend, or open on that day while the use was recorded as another lot. */
  as: 'itself' | 'house blend' | 'another open lot that day';
}

export class ReportExposuresView {
  clients: number;
  certainClients: number;
  sessions: number;
  certainSessions: number;
  /** Recorded by mistake and taken back; they expose nobody. */
  reversedUses: number;
  items: ReportExposureView[];
  /** How many are not listed here; the spreadsheet of exposures has them all. */
  leftOut: number;
}

/** How it stands with a client who was to be told. */
export class ReportToldClientView {
  clientId: string;
  clientReference: string;
  certainty: 'certain' | 'possible' | null;
  erased: boolean;
  attempts: number;
  standing: 'not tried' | 'reached' | 'refused' | 'no answer' | 'message left' | 'unreachable';
  lastAt: string | null;
}

export class ReportContactCountView {
  audience: ContactAudience;
  outcome: string;
  attempts: number;
}

export class ReportContactsView {
  counts: ReportContactCountView[];
  clients: ReportToldClientView[];
  leftOut: number;
}

export class ReportUnexplainedView {
  reason: string;
  pieces: number;
  /** An estimate. */
  microlitres: number;
}

/** Where the pieces of a lot went. Volumes are estimates in microlitres. */
export class ReportBalanceView {
  lotId: string;
  code: string | null;
  productName: string;
  shade: string | null;
  /** True: a house blend in which a lot of the recall is. */
  isBlend: boolean;
  standing: 'affected' | 'undecided';
  cameInPieces: number;
  usedPieces: number;
  emptiedPieces: number;
  blendedPieces: number;
  wastedPieces: number;
  returnedPieces: number;
  transferredOutPieces: number;
  /** On hand, and found by somebody who looked for it. */
  foundPieces: number;
  notAccountedPieces: number;
  onHandPieces: number;
  cameInMicrolitres: number;
  usedMicrolitres: number;
  onHandMicrolitres: number;
  unexplained: ReportUnexplainedView[];
  /** Of the pieces, whole per cent, rounded down; null: none came in. */
  balancedPercent: number | null;
}

export class ReportContainerView {
  containerId: string;
  labelCode: string;
  lotId: string;
  lotCode: string | null;
  productName: string;
  form: string;
  /** By the latest look for it. */
  standing: 'not looked for' | 'found' | 'not found' | 'disposed' | 'gone';
  /** Left by the book. */
  pieces: number;
  foundAt: string | null;
  personId: string | null;
  tag: string | null;
}

export class ReportDispositionView {
  containerId: string;
  labelCode: string;
  lotId: string;
  kind: DispositionKind;
  pieces: number;
  microlitres: number;
  reference: string;
  witnessId: string | null;
  photoId: string | null;
  at: string;
  personId: string | null;
}

export class ReportOverrideView {
  obstacle: ClosingObstacle;
  reason: string;
}

/** The latest closing or withdrawal. */
export class ReportClosingView {
  outcome: 'closed' | 'withdrawn';
  reason: string | null;
  at: string;
  overrides: ReportOverrideView[];
  /** Null: a part that followed the withdrawal of another studio. */
  signedBy: string | null;
  secondSignedBy: string | null;
}

export class ReportPersonView {
  id: string;
  name: string | null;
}

/** All there is to say of a recall: what its report is drawn from. Clients are named by reference only. */
export class RecallReportView {
  /** When it was drawn up; of a closed recall at its closing, and it stays so. */
  drawnAt: string;
  studio: ReportStudioView;
  recall: ReportRecallView;
  scopes: ReportScopeView[];
  timeline: ReportEventView[];
  lots: ReportLotView[];
  exposures: ReportExposuresView;
  contacts: ReportContactsView;
  balance: ReportBalanceView[];
  containers: ReportContainerView[];
  dispositions: ReportDispositionView[];
  figures: ClosingFiguresView;
  /** What stood against closing when this was drawn up. */
  obstacles: ObstacleView[];
  /** Null: not closed. */
  closing: ReportClosingView | null;
  steps: RecallStepView[];
  /** Of a drill. */
  score: DrillScoreView | null;
  /** Who is named by id above. */
  people: ReportPersonView[];
}

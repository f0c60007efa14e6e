import type { KnownBy, SessionState, Verdict } from './vocabulary.js';

/** What a reason's sentence is made of; which of them there are depends on its code. Days are `YYYY-MM-DD`. */
export class ReasonFactsView {
  /** Maker, product and shade of what was shown. */
  label?: string;
  lotCode?: string | null;
  /** Null: nothing that may be used is here. */
  insteadLabel?: string | null;
  insteadLotCode?: string | null;
  /** Why it is on hold, in the words of whoever put it there. */
  reason?: string;
  on?: 'container' | 'lot' | 'parent lot';
  lastDay?: string | null;
  openedLifeFrom?: 'label' | 'assumed' | 'sending studio' | 'none';
  /** The use-by on record where the symbol's, which counts, is earlier. */
  laterRecordedUseBy?: string | null;
  symbolUseBy?: string;
  recordedUseBy?: string;
  /** Of two dates that differ. */
  counted?: 'record' | 'earlier';
  touchUpBy?: string;
  state?: 'sealed' | 'opened' | 'finished' | 'discarded' | 'practice only';
  pieces?: number;
  reservedPieces?: number;
  linesOnTray?: number;
  choices?: number;
  ownerId?: string;
  /** The other container that a warning is about. */
  containerId?: string;
  otherLabel?: string;
  otherLotCode?: string | null;
}

export class ReasonView {
  /** Stable code, such as `expired`. */
  code: string;
  /** A sentence for the artist. */
  message: string;
  /** What the sentence is made of; left out where it says all, and in answers recorded before there were facts. */
  facts?: ReasonFactsView;
}

export class TrayThingView {
  containerId: string;
  lotId: string;
  productId: string;
  /** Maker, product and shade. */
  label: string;
  /** Lotward's own code on the label. */
  labelCode: string;
  lotCode: string | null;
  state: 'sealed' | 'opened' | 'finished' | 'discarded' | 'practice only';
  /** Last day on which it may be used; null when no date is known. */
  lastDay: string | null;
  /** Whose opened life was counted. */
  openedLifeFrom: 'label' | 'assumed' | 'sending studio' | 'none';
  /** Pieces by the book that no tray holds. */
  availablePieces: number;
}

export class ScanView {
  id: string;
  sessionId: string;
  verdict: Verdict;
  /** The worst first. */
  reasons: ReasonView[];
  knownBy: KnownBy;
  /** What the scan was taken for; null when a question is open. */
  thing: TrayThingView | null;
  /** What to take instead, or first. */
  instead: TrayThingView | null;
  /** What a question can be answered with. */
  choices: TrayThingView[];
  /** What the screen may offer now: opening the sealed bottle, or one piece more. */
  offers: ('open' | 'another')[];
  /** The line this scan put on the tray. */
  trayLineId: string | null;
  occurredAt: string;
}

export class TrayLineView {
  id: string;
  productId: string;
  lotId: string;
  containerId: string;
  label: string;
  labelCode: string;
  lotCode: string | null;
  stockForm: 'container' | 'pieces';
  isPigment: boolean;
  pieces: number;
  knownBy: KnownBy;
  admittedAt: string;
  state: 'on tray' | 'taken off' | 'settled';
  settledAs: 'used' | 'opened unused' | 'back unopened' | null;
  /** Why it may not be used any more, when something changed since it was admitted. */
  refusedNow: ReasonView[];
}

export class KitGapView {
  productId: string | null;
  configuration: string | null;
  label: string;
  quantityPieces: number;
}

export class TrayView {
  sessionId: string;
  state: SessionState;
  version: number;
  lines: TrayLineView[];
  /** What the kit list asks for and the tray lacks; empty without a kit list. */
  lacking: KitGapView[];
}

export class TakenOffView {
  /** The line. */
  id: string;
}

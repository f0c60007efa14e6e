import type { ShelfLife } from '../stock/shelf-life.js';
import type { HoldFact, TrayThing } from './tray-thing.js';

/**
 * What the sentence of a reason is made of, so that a screen can say it in another language. Which of them there are
 * depends on the reason. Days are ISO `YYYY-MM-DD`.
 */
export type ReasonFacts = {
  /** Maker, product and shade of what was shown. */
  label?: string;
  lotCode?: string | null;
  /** What to take instead of what is refused; null: nothing that may be used is here. */
  insteadLabel?: string | null;
  insteadLotCode?: string | null;
  /** Why it is on hold, in the words of whoever put it there. */
  reason?: string;
  on?: HoldFact['on'];
  lastDay?: string | null;
  openedLifeFrom?: ShelfLife['openedLifeFrom'];
  /** The use-by on record where the symbol's, which counts, is earlier. */
  laterRecordedUseBy?: string | null;
  symbolUseBy?: string;
  recordedUseBy?: string;
  /** Of two dates that differ: whether the record's counts or the earlier. */
  counted?: 'record' | 'earlier';
  touchUpBy?: string;
  state?: TrayThing['state'];
  pieces?: number;
  reservedPieces?: number;
  linesOnTray?: number;
  /** Among how many the person is asked. */
  choices?: number;
  ownerId?: string;
  /** The other container that a warning is about. */
  containerId?: string;
  otherLabel?: string;
  otherLotCode?: string | null;
};

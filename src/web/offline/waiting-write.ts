import type { DayLine } from '../../sessions/day-facts.js';
import type { Verdict } from '../../sessions/vocabulary.js';
import type { MixPress } from '../tray/shown-mixes.js';
import type { Shown } from '../tray/tray.requests.js';

/** How a scan was judged on this device, as long as the service has not. */
export interface JudgedHere {
  verdict: Verdict;
  /** What it was taken for; null when a question is open. */
  label: string | null;
  containerId: string | null;
  /** The line it put on the tray as it lies. */
  line: DayLine | null;
}

/**
 * Something that happened at a tray and was not answered by the service yet. It is sent in the name of whoever did it and
 * of nobody else, in the order in which it happened, with the id it has from the beginning.
 */
export type WaitingWrite = {
  /** Of the request: UUIDv7, so that ids sort by when they were made. */
  id: string;
  /** ISO 8601, by the clock of this device. */
  occurredAt: string;
  studioId: string;
  sessionId: string;
  personId: string;
} & (
  | { kind: 'setup' }
  /** Null: this device did not know what was shown. Left out: it was not asked. */
  | { kind: 'scan'; shown: Shown; judgedHere?: JudgedHere | null }
  | { kind: 'mix press'; press: MixPress }
  | { kind: 'take off'; lineId: string }
  | { kind: 'open'; containerId: string }
);

export type WaitingScan = Extract<WaitingWrite, { kind: 'scan' }>;

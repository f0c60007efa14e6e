import type { AlertSeverity } from '../open-condition.js';

/** The parts of a morning summary, in the order in which they are said. */
export const summaryPartNames = [
  'answer today',
  'use first',
  'discard',
  'order',
  'touch-ups at risk',
] as const;
export type SummaryPartName = (typeof summaryPartNames)[number];

/** An alert as a summary tells of it; its facts as they were that morning, never a client. */
export interface SummaryLine {
  alertId: string;
  kind: string;
  subjectKind: string;
  subjectId: string;
  severity: AlertSeverity;
  facts: Record<string, unknown>;
}

export interface SummaryPart {
  name: SummaryPartName;
  /** What comes first is the most pressing. */
  lines: SummaryLine[];
  /** How many more there are than are told. */
  more: number;
}

/** What one person is told on one morning. */
export interface SummaryContent {
  /** The studio's local day, ISO `YYYY-MM-DD`. */
  day: string;
  /** Only those with something to say; none: nothing is to be done. */
  parts: SummaryPart[];
}

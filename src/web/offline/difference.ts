import type { ScanView } from '../../sessions/tray.views.js';
import type { ServiceProblem } from '../service/problem.js';
import type { JudgedHere, WaitingWrite } from './waiting-write.js';

/** What the service answered otherwise than this device had judged, or did not take at all; kept until it was seen. */
export interface Difference {
  /** Of the write. */
  id: string;
  occurredAt: string;
  studioId: string;
  sessionId: string;
  personId: string;
  /** What it was about, as far as it is known. */
  label: string | null;
  judgedHere: JudgedHere['verdict'] | null;
  /** Null when the service took nothing of it. */
  judgedThere: ScanView['verdict'] | null;
  /** Why, in the service's words, the worst first. */
  reasons: string[];
}

/** Whether it lies on the tray by this verdict. */
function isOnTray(verdict: ScanView['verdict']): boolean {
  return verdict === 'admitted' || verdict === 'warned';
}

/**
 * What an artist has to be told when the service judged a scan that was judged here before: that it lies on the tray by
 * one and not by the other, that it was taken for another container, or what became of something this device did not know.
 * Undefined when both say the same, and when the service judged it alone.
 */
export function differenceOf(write: WaitingWrite, answer: ScanView): Difference | undefined {
  const judgedHere = write.kind === 'scan' ? write.judgedHere : undefined;
  if (judgedHere === undefined) return undefined;
  return judgedHere !== null && saysTheSame(judgedHere, answer) ? undefined : answered(write, answer);
}

/** What was judged by the service alone, and was seen by nobody: all is well where it lies on the tray. */
export function unseenRefusalOf(write: WaitingWrite, answer: ScanView): Difference | undefined {
  return isOnTray(answer.verdict) ? undefined : answered(write, answer);
}

function answered(write: WaitingWrite, { thing, verdict, reasons }: ScanView): Difference {
  return {
    ...factsOf(write),
    label: thing?.label ?? labelOf(write),
    judgedThere: verdict,
    reasons: reasons.map(({ message }) => message),
  };
}

function saysTheSame(here: JudgedHere, there: ScanView): boolean {
  if (isOnTray(here.verdict) !== isOnTray(there.verdict)) return false;
  return !isOnTray(there.verdict) || here.containerId === (there.thing?.containerId ?? null);
}

/** What the service refused altogether, and nobody saw where it happened. */
export function refusalOf(write: WaitingWrite, problem: ServiceProblem): Difference {
  const { detail, faults = [] } = problem.document;
  return {
    ...factsOf(write),
    label: labelOf(write),
    judgedThere: null,
    reasons: faults.length > 0 ? faults.map(({ message }) => message) : [detail],
  };
}

function factsOf(write: WaitingWrite): Omit<Difference, 'label' | 'judgedThere' | 'reasons'> {
  const { id, occurredAt, studioId, sessionId, personId } = write;
  const judgedHere = write.kind === 'scan' ? (write.judgedHere?.verdict ?? null) : null;
  return { id, occurredAt, studioId, sessionId, personId, judgedHere };
}

function labelOf(write: WaitingWrite): string | null {
  return write.kind === 'scan' ? (write.judgedHere?.label ?? write.shown.symbol ?? null) : null;
}

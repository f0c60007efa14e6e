import type { AlertSeverity } from './open-condition.js';

/** What an alert says of its own steps. */
export interface StepsOnAlert {
  severity: AlertSeverity;
  openedAt: string;
  acknowledgedAt: string | null;
  acknowledgedBy: string | null;
  closedAt: string | null;
  closedBy: string | null;
}

/** A step that is told from the alert itself. */
export interface ToldStep {
  event: 'opened' | 'acknowledged' | 'closed';
  severity: AlertSeverity;
  personId: string | null;
  recordedAt: string;
}

/**
 * The steps of an alert from before histories were kept: its opening, its acknowledgement and its closing, where no entry
 * tells of them. Its severity was not kept, so the present one stands for all.
 *
 * @param events what its entries tell of
 * @returns the first step first
 */
export function toldSteps(alert: StepsOnAlert, events: readonly string[]): ToldStep[] {
  const { severity } = alert;
  const told: ToldStep[] = [];
  const tell = (event: ToldStep['event'], recordedAt: string | null, personId: string | null) => {
    if (recordedAt !== null && !events.includes(event)) told.push({ event, severity, personId, recordedAt });
  };
  tell('opened', alert.openedAt, null);
  tell('acknowledged', alert.acknowledgedAt, alert.acknowledgedBy);
  tell('closed', alert.closedAt, alert.closedBy);
  return told;
}

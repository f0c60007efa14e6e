import { type AlertSubject, alertPath } from '../../alerts/channels/alert-path.js';

/** The page on which something can be done about an alert; undefined when there is none. What is sent leads there too. */
export function pathOfAlert(studioId: string, alert: AlertSubject): string | undefined {
  return alertPath(studioId, alert);
}

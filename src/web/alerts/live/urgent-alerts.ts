import type { AlertView } from '../../../alerts/alerts.views.js';
import { useAnswer } from '../../service/use-answer.js';
import { listUrgent, mostUrgent } from '../alerts.requests.js';

/** The urgent alerts that are open and not put off, with and without somebody who took them on; undefined: not known yet. */
export function useUrgentAlerts(studioId: string): AlertView[] | undefined {
  return useAnswer(['alerts', studioId, 'urgent'], () => listUrgent(studioId)).answer?.items;
}

/** How many there are, as the menu says it; of very many it is enough to know that. */
export function urgentCount(alerts: readonly AlertView[]): string {
  return alerts.length < mostUrgent ? String(alerts.length) : `${mostUrgent}+`;
}

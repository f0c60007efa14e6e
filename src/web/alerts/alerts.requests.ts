import type { AlertView } from '../../alerts/alerts.views.js';
import { request } from '../service/request.js';

/** As many open alerts as the day shows; a studio that has more has to see to those first. */
export const mostAlerts = 100;

/** Those that are open and not put off. */
export const listAlerts = (studioId: string) =>
  request('GET', '/studios/{studioId}/alerts', { studioId, state: 'open', putOff: 'no', limit: mostAlerts });

/** What a list of alerts is narrowed by; what is left out narrows nothing. */
export interface AlertFilters {
  state: 'open' | 'closed' | 'all';
  putOff?: 'yes' | 'no' | undefined;
  givenTo?: 'me' | undefined;
  severity?: AlertView['severity'] | undefined;
  kind?: string | undefined;
}

/** The latest first. */
export const listAlertPage = (studioId: string, filters: AlertFilters, after: string | undefined) =>
  request('GET', '/studios/{studioId}/alerts', { studioId, ...filters, limit: 50, after });

/** As many urgent ones as are counted; more are too many for the exact number to matter. */
export const mostUrgent = 50;

/** Those that are open and not put off, taken on or not. */
export const listUrgent = (studioId: string) =>
  request('GET', '/studios/{studioId}/alerts', {
    ...{ studioId, limit: mostUrgent },
    ...({ state: 'open', putOff: 'no', severity: 'urgent' } as const),
  });

export const askAlert = (studioId: string, alertId: string) =>
  request('GET', '/studios/{studioId}/alerts/{alertId}', { studioId, alertId });

export const acknowledge = (studioId: string, alertId: string, id: string) =>
  request('POST', '/studios/{studioId}/alerts/{alertId}/acknowledge', { studioId, alertId }, { id });

/** @param until plain date, local to the studio */
export const putOff = (studioId: string, alertId: string, body: { id: string; until: string }) =>
  request('POST', '/studios/{studioId}/alerts/{alertId}/put-off', { studioId, alertId }, body);

export const give = (studioId: string, alertId: string, body: { id: string; personId: string }) =>
  request('POST', '/studios/{studioId}/alerts/{alertId}/give', { studioId, alertId }, body);

export const addNote = (studioId: string, alertId: string, body: { id: string; note: string }) =>
  request('POST', '/studios/{studioId}/alerts/{alertId}/notes', { studioId, alertId }, body);

export const close = (studioId: string, alertId: string, body: { id: string; note: string }) =>
  request('POST', '/studios/{studioId}/alerts/{alertId}/close', { studioId, alertId }, body);

export const listDeliveries = (studioId: string, alertId: string) =>
  request('GET', '/studios/{studioId}/alerts/{alertId}/deliveries', { studioId, alertId });

/** What waits to be sent, or could not be; the latest first. */
export const listPromised = (
  studioId: string,
  state: 'pending' | 'undeliverable',
  after: string | undefined,
) => request('GET', '/studios/{studioId}/alerts/deliveries', { studioId, state, after });

/** Whether there is anything that could not be sent, and about which something can still be done. */
export async function isAnythingNotSent(studioId: string): Promise<boolean> {
  const page = await request('GET', '/studios/{studioId}/alerts/deliveries', {
    ...{ studioId, limit: 1, actionable: true },
    state: 'undeliverable',
  });
  return page.items.length > 0;
}

/** @param whose all that whoever asks may see, or only their own */
export const listDestinations = (studioId: string, whose: 'own' | 'all', after?: string) =>
  request('GET', '/studios/{studioId}/alert-destinations', { studioId, whose, limit: 200, after });

export const sendAgain = (studioId: string, deliveryId: string, id: string) =>
  request(
    'POST',
    '/studios/{studioId}/alerts/deliveries/{deliveryId}/send-again',
    { studioId, deliveryId },
    { id },
  );

/** What the summary of the morning would say at this moment. */
export const askSummaryNow = (studioId: string) =>
  request('GET', '/studios/{studioId}/morning-summary', { studioId });

/** Those that were written for whoever asks, the latest first. */
export const listSummaries = (studioId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/morning-summaries', { studioId, limit: 10, after });

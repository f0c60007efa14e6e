import { request } from '../service/request.js';

/** As many open alerts as one page holds; a studio that has more has to see to those first. */
export const mostAlerts = 100;

export const listAlerts = (studioId: string) =>
  request('GET', '/studios/{studioId}/alerts', { studioId, state: 'open', limit: mostAlerts });
export const acknowledge = (studioId: string, alertId: string, id: string) =>
  request('POST', '/studios/{studioId}/alerts/{alertId}/acknowledge', { studioId, alertId }, { id });

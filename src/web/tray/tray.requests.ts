import type { Event } from '../service/events.js';
import { request } from '../service/request.js';

/** What is shown to the tray: the text of a symbol or a lot code, or what was picked after a question. */
export interface Shown {
  symbol?: string;
  containerId?: string;
  /** It is one piece more with the same symbol. */
  another?: true;
}

export const showTray = (studioId: string, sessionId: string) =>
  request('GET', '/studios/{studioId}/sessions/{sessionId}/tray', { studioId, sessionId });
export const scan = (studioId: string, sessionId: string, shown: Shown & Event) =>
  request('POST', '/studios/{studioId}/sessions/{sessionId}/scans', { studioId, sessionId }, shown);
export const takeOff = (studioId: string, sessionId: string, lineId: string, event: Event) =>
  request(
    'POST',
    '/studios/{studioId}/sessions/{sessionId}/tray/{lineId}/take-off',
    { studioId, sessionId, lineId },
    event,
  );
export const openContainer = (studioId: string, containerId: string, event: Event) =>
  request('POST', '/studios/{studioId}/containers/{containerId}/open', { studioId, containerId }, event);

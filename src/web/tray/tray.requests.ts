import type { ScanView, TakenOffView, TrayView } from '../../sessions/tray.views.js';
import type { Event } from '../service/events.js';
import { request } from '../service/request.js';

const session = (studioId: string, sessionId: string) => `/studios/${studioId}/sessions/${sessionId}`;

/** What is shown to the tray: the text of a symbol or a lot code, or what was picked after a question. */
export interface Shown {
  symbol?: string;
  containerId?: string;
  /** It is one piece more with the same symbol. */
  another?: true;
}

export const showTray = (studioId: string, sessionId: string) =>
  request<TrayView>('GET', `${session(studioId, sessionId)}/tray`);
export const scan = (studioId: string, sessionId: string, shown: Shown & Event) =>
  request<ScanView>('POST', `${session(studioId, sessionId)}/scans`, shown);
export const takeOff = (studioId: string, sessionId: string, lineId: string, event: Event) =>
  request<TakenOffView>('POST', `${session(studioId, sessionId)}/tray/${lineId}/take-off`, event);
export const openContainer = (studioId: string, containerId: string, event: Event) =>
  request('POST', `/studios/${studioId}/containers/${containerId}/open`, event);

import type { StudioView } from '../../identity/studios.views.js';
import type {
  SessionListItemView,
  SessionPageView,
  WrittenSessionView,
} from '../../sessions/sessions.views.js';
import type { Event } from '../service/events.js';
import { request } from '../service/request.js';

const sessions = (studioId: string) => `/studios/${studioId}/sessions`;

export const showStudio = (studioId: string) => request<StudioView>('GET', `/studios/${studioId}`);

/** As many as one page of the list holds; no studio treats more people in a day. */
const most = 200;

/** The sessions of one local day of the studio. */
export async function listSessionsOfDay(studioId: string, day: string): Promise<SessionListItemView[]> {
  const page = await request<SessionPageView>(
    'GET',
    `${sessions(studioId)}?from=${day}&to=${day}&limit=${most}`,
  );
  return page.items;
}

/** The sessions whose tray is being laid, of whatever day. */
export async function listSessionsInSetup(studioId: string): Promise<SessionListItemView[]> {
  const state = encodeURIComponent('in setup');
  const page = await request<SessionPageView>('GET', `${sessions(studioId)}?state=${state}&limit=${most}`);
  return page.items;
}

export const startSetup = (studioId: string, sessionId: string, step: Event) =>
  request<WrittenSessionView>('POST', `${sessions(studioId)}/${sessionId}/setup`, step);

import type { SessionListItemView } from '../../sessions/sessions.views.js';
import type { Event } from '../service/events.js';
import { request, type Sending } from '../service/request.js';

/** As many as one page of the list holds; no studio treats more people in a day. */
const most = 200;

/** The sessions of one local day of the studio. */
export async function listSessionsOfDay(studioId: string, day: string): Promise<SessionListItemView[]> {
  const page = await request('GET', '/studios/{studioId}/sessions', {
    studioId,
    from: day,
    to: day,
    limit: most,
  });
  return page.items;
}

/** The sessions whose tray is being laid, of whatever day. */
export async function listSessionsInSetup(studioId: string): Promise<SessionListItemView[]> {
  const page = await request('GET', '/studios/{studioId}/sessions', {
    studioId,
    state: 'in setup',
    limit: most,
  });
  return page.items;
}

export const startSetup = (studioId: string, sessionId: string, step: Event, sending?: Sending) =>
  request('POST', '/studios/{studioId}/sessions/{sessionId}/setup', { studioId, sessionId }, step, sending);

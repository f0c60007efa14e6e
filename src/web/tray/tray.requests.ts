import type { SessionListItemView } from '../../sessions/sessions.views.js';
import type { TouchUpView } from '../../sessions/touch-up.views.js';
import type { Event } from '../service/events.js';
import type { BodyOf } from '../service/operations.js';
import { isProblem } from '../service/problem.js';
import { request, type Sending } from '../service/request.js';
import type { MixPress } from './shown-mixes.js';

/** What is shown to the tray: the text of a symbol or a lot code, or what was picked after a question. */
export interface Shown {
  symbol?: string;
  containerId?: string;
  /** It is one piece more with the same symbol. */
  another?: true;
}

export const showTray = (studioId: string, sessionId: string) =>
  request('GET', '/studios/{studioId}/sessions/{sessionId}/tray', { studioId, sessionId });
export const scan = (studioId: string, sessionId: string, shown: Shown & Event, sending?: Sending) =>
  request('POST', '/studios/{studioId}/sessions/{sessionId}/scans', { studioId, sessionId }, shown, sending);
export const takeOff = (
  studioId: string,
  sessionId: string,
  lineId: string,
  event: Event,
  sending?: Sending,
) =>
  request(
    'POST',
    '/studios/{studioId}/sessions/{sessionId}/tray/{lineId}/take-off',
    { studioId, sessionId, lineId },
    event,
    sending,
  );
export const openContainer = (studioId: string, containerId: string, event: Event, sending?: Sending) =>
  request(
    'POST',
    '/studios/{studioId}/containers/{containerId}/open',
    { studioId, containerId },
    event,
    sending,
  );

export const listMixes = (studioId: string, sessionId: string) =>
  request('GET', '/studios/{studioId}/sessions/{sessionId}/mixes', { studioId, sessionId });

/** Sends what was pressed for a mix. @returns the mix, and why a bottle dropped into it may not be used any more */
export async function press(studioId: string, sessionId: string, pressed: MixPress, sending?: Sending) {
  const { id, occurredAt } = pressed;
  if ('begins' in pressed) {
    const mix = await request(
      'POST',
      '/studios/{studioId}/sessions/{sessionId}/mixes',
      { studioId, sessionId },
      { id, occurredAt, label: pressed.begins },
      sending,
    );
    return { mix, warnings: [] };
  }
  const { mixId, ...added } = pressed;
  const { warnings, ...mix } = await request(
    'POST',
    '/studios/{studioId}/sessions/{sessionId}/mixes/{mixId}/components',
    { studioId, sessionId, mixId },
    added,
    sending,
  );
  return { mix, warnings };
}

/** What an earlier visit leaves to this one: of the visit it follows, else of the latest first session; null: none. */
export async function showLastVisit(
  studioId: string,
  { id, clientId, followsSessionId }: SessionListItemView,
): Promise<TouchUpView | null> {
  if (followsSessionId === null) {
    const visits = await request('GET', '/studios/{studioId}/clients/{clientId}/touch-ups', {
      studioId,
      clientId,
    });
    return visits[0] ?? null;
  }
  try {
    return await request('GET', '/studios/{studioId}/sessions/{sessionId}/touch-up', {
      studioId,
      sessionId: id,
    });
  } catch (error) {
    // The visit it follows was never completed.
    if (isProblem(error, 'wrong-state')) return null;
    throw error;
  }
}

/** What to take of a product, the first to expire first. */
export const pickOf = (studioId: string, productId: string) =>
  request('GET', '/studios/{studioId}/containers/pick', { studioId, productId });

export type Completion = BodyOf<'POST', '/studios/{studioId}/sessions/{sessionId}/completion'>;

export const complete = (studioId: string, sessionId: string, completion: Completion) =>
  request('POST', '/studios/{studioId}/sessions/{sessionId}/completion', { studioId, sessionId }, completion);

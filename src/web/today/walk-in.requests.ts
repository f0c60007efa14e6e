import type { BodyOf } from '../service/operations.js';
import { request } from '../service/request.js';

export const listPeople = (studioId: string) => request('GET', '/studios/{studioId}/people', { studioId });

/** What the studio offers. */
export const listProcedures = (studioId: string) =>
  request('GET', '/studios/{studioId}/procedures', { studioId });

/** Sent in the body, so that no name or contact ever stands in an address. */
export const findClients = (studioId: string, text: string) =>
  request('POST', '/studios/{studioId}/clients/search', { studioId }, { text });

export const beginWalkIn = (
  studioId: string,
  walkIn: BodyOf<'POST', '/studios/{studioId}/sessions/walk-in'>,
) => request('POST', '/studios/{studioId}/sessions/walk-in', { studioId }, walkIn);

import type { BodyOf } from '../../service/operations.js';
import { request } from '../../service/request.js';

export type NewWebhook = BodyOf<'POST', '/studios/{studioId}/alert-destinations/webhooks'>;
export type HandingOnChoice = BodyOf<'PUT', '/studios/{studioId}/handing-on'>;

export const listTold = (studioId: string) =>
  request('GET', '/studios/{studioId}/alert-preferences', { studioId });

export const showHandingOn = (studioId: string) =>
  request('GET', '/studios/{studioId}/handing-on', { studioId });
export const setHandingOn = (studioId: string, choice: HandingOnChoice) =>
  request('PUT', '/studios/{studioId}/handing-on', { studioId }, choice);

export const addWebhook = (studioId: string, webhook: NewWebhook) =>
  request('POST', '/studios/{studioId}/alert-destinations/webhooks', { studioId }, webhook);
export const rotateSecret = (studioId: string, destinationId: string, id: string) =>
  request(
    'POST',
    '/studios/{studioId}/alert-destinations/{destinationId}/rotate-secret',
    { studioId, destinationId },
    { id },
  );

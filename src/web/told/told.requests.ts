import type { BodyOf } from '../service/operations.js';
import { request } from '../service/request.js';

export type HowToBeTold = Omit<BodyOf<'PUT', '/studios/{studioId}/alert-preferences/own'>, 'id'>;
export type DestinationChange = BodyOf<'PATCH', '/studios/{studioId}/alert-destinations/{destinationId}'>;
export type NewPush = BodyOf<'POST', '/studios/{studioId}/alert-destinations/push'>;

export const showOwnPreference = (studioId: string) =>
  request('GET', '/studios/{studioId}/alert-preferences/own', { studioId });
export const setOwnPreference = (studioId: string, id: string, chosen: HowToBeTold) =>
  request('PUT', '/studios/{studioId}/alert-preferences/own', { studioId }, { id, ...chosen });

export const addMail = (studioId: string, mail: { id: string; personId: string; address: string }) =>
  request('POST', '/studios/{studioId}/alert-destinations/mail', { studioId }, mail);
export const askPushKey = (studioId: string) =>
  request('GET', '/studios/{studioId}/alert-destinations/push-key', { studioId });
export const addPush = (studioId: string, push: NewPush) =>
  request('POST', '/studios/{studioId}/alert-destinations/push', { studioId }, push);
export const changeDestination = (studioId: string, destinationId: string, change: DestinationChange) =>
  request(
    'PATCH',
    '/studios/{studioId}/alert-destinations/{destinationId}',
    { studioId, destinationId },
    change,
  );
export const removeDestination = (studioId: string, destinationId: string, id: string) =>
  request(
    'POST',
    '/studios/{studioId}/alert-destinations/{destinationId}/remove',
    { studioId, destinationId },
    { id },
  );
export const testDestination = (studioId: string, destinationId: string, id: string) =>
  request(
    'POST',
    '/studios/{studioId}/alert-destinations/{destinationId}/test',
    { studioId, destinationId },
    { id },
  );
/** The latest ones, the newest first. */
export const listDeliveriesTo = (studioId: string, destinationId: string) =>
  request('GET', '/studios/{studioId}/alert-destinations/{destinationId}/deliveries', {
    studioId,
    destinationId,
  });

export const showCalendarAddress = (studioId: string) =>
  request('GET', '/studios/{studioId}/calendar-address', { studioId });
export const makeCalendarAddress = (studioId: string, id: string) =>
  request('POST', '/studios/{studioId}/calendar-address', { studioId }, { id });
export const removeCalendarAddress = (studioId: string, id: string) =>
  request('POST', '/studios/{studioId}/calendar-address/remove', { studioId }, { id });

import type { BodyOf } from '../../service/operations.js';
import { request } from '../../service/request.js';

export type NewExpected = BodyOf<'POST', '/studios/{studioId}/expected-deliveries'>;
export type ExpectedChange = BodyOf<'PATCH', '/studios/{studioId}/expected-deliveries/{expectedDeliveryId}'>;

/** What is still to come by its day, what is over with the latest first. */
export const listExpected = (studioId: string, state: 'expected' | 'ended', after?: string) =>
  request('GET', '/studios/{studioId}/expected-deliveries', { studioId, state, after });
export const expectDelivery = (studioId: string, delivery: NewExpected) =>
  request('POST', '/studios/{studioId}/expected-deliveries', { studioId }, delivery);
export const changeExpected = (studioId: string, expectedDeliveryId: string, change: ExpectedChange) =>
  request(
    'PATCH',
    '/studios/{studioId}/expected-deliveries/{expectedDeliveryId}',
    { studioId, expectedDeliveryId },
    change,
  );
export const callOffExpected = (studioId: string, expectedDeliveryId: string, id: string) =>
  request(
    'POST',
    '/studios/{studioId}/expected-deliveries/{expectedDeliveryId}/call-off',
    { studioId, expectedDeliveryId },
    { id },
  );
export const expectedCame = (studioId: string, expectedDeliveryId: string, id: string) =>
  request(
    'POST',
    '/studios/{studioId}/expected-deliveries/{expectedDeliveryId}/received',
    { studioId, expectedDeliveryId },
    { id },
  );

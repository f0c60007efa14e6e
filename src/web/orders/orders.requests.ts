import type { OrderWarningCode } from '../../reorder/purchase-orders/order-warnings.js';
import type { BodyOf } from '../service/operations.js';
import { request, requestFile } from '../service/request.js';

export type OrderChange = Omit<BodyOf<'PATCH', '/studios/{studioId}/purchase-orders/{orderId}'>, 'id'>;

export const listOrders = (studioId: string, state: 'open' | 'ended', after: string | undefined) =>
  request('GET', '/studios/{studioId}/purchase-orders', { studioId, state, after });
export const showOrder = (studioId: string, orderId: string) =>
  request('GET', '/studios/{studioId}/purchase-orders/{orderId}', { studioId, orderId });
export const draftOrder = (studioId: string, draft: BodyOf<'POST', '/studios/{studioId}/purchase-orders'>) =>
  request('POST', '/studios/{studioId}/purchase-orders', { studioId }, draft);
export const changeOrder = (studioId: string, orderId: string, id: string, change: OrderChange) =>
  request('PATCH', '/studios/{studioId}/purchase-orders/{orderId}', { studioId, orderId }, { id, ...change });
export const approveOrder = (
  studioId: string,
  orderId: string,
  approval: { id: string; version: number; confirmed: OrderWarningCode[] },
) =>
  request('POST', '/studios/{studioId}/purchase-orders/{orderId}/approval', { studioId, orderId }, approval);
export const sendOrder = (
  studioId: string,
  orderId: string,
  sending: BodyOf<'POST', '/studios/{studioId}/purchase-orders/{orderId}/sending'>,
) => request('POST', '/studios/{studioId}/purchase-orders/{orderId}/sending', { studioId, orderId }, sending);

/** What needs nothing but the version it is done to. */
const steps = {
  'draft-again': (studioId: string, orderId: string, step: { id: string; version: number }) =>
    request('POST', '/studios/{studioId}/purchase-orders/{orderId}/draft-again', { studioId, orderId }, step),
  'call-off': (studioId: string, orderId: string, step: { id: string; version: number }) =>
    request('POST', '/studios/{studioId}/purchase-orders/{orderId}/call-off', { studioId, orderId }, step),
  closing: (studioId: string, orderId: string, step: { id: string; version: number }) =>
    request('POST', '/studios/{studioId}/purchase-orders/{orderId}/closing', { studioId, orderId }, step),
};
export type BareStep = keyof typeof steps;
export const takeStep = (
  studioId: string,
  orderId: string,
  step: BareStep,
  given: { id: string; version: number },
) => steps[step](studioId, orderId, given);

export const orderPdf = (studioId: string, orderId: string) =>
  requestFile('GET', '/studios/{studioId}/purchase-orders/{orderId}/order.pdf', { studioId, orderId });
export const orderCsv = (studioId: string, orderId: string) =>
  requestFile('GET', '/studios/{studioId}/purchase-orders/{orderId}/order.csv', { studioId, orderId });

/** What a supplier offers, as far as one list shows it. */
export const offersOf = (studioId: string, supplierId: string) =>
  request('GET', '/studios/{studioId}/offers', { studioId, supplierId, limit: 200 });

import type { Event } from '../service/events.js';
import type { BodyOf } from '../service/operations.js';
import { request, requestFile } from '../service/request.js';
import type { DeliveryBody } from './handed-in-line.js';

export type LabelsBody = BodyOf<'POST', '/studios/{studioId}/labels'>;

const pageSize = 50;
/** As many as one answer holds. */
const most = 200;

export const receiveDelivery = (
  studioId: string,
  delivery: Omit<DeliveryBody, 'id' | 'occurredAt'> & Event,
) => request('POST', '/studios/{studioId}/deliveries', { studioId }, delivery);
export const listDeliveries = (studioId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/deliveries', {
    studioId,
    limit: pageSize,
    ...(after !== undefined && { after }),
  });
export const showDelivery = (studioId: string, deliveryId: string) =>
  request('GET', '/studios/{studioId}/deliveries/{deliveryId}', { studioId, deliveryId });
export const listContainers = (
  studioId: string,
  query: { lotId?: string; productId?: string; after?: string | undefined },
) => {
  const { after, ...asked } = query;
  return request('GET', '/studios/{studioId}/containers', {
    studioId,
    limit: most,
    ...asked,
    ...(after !== undefined && { after }),
  });
};
export const printLabels = (studioId: string, labels: LabelsBody) =>
  requestFile('POST', '/studios/{studioId}/labels', { studioId }, labels);
/** Lots of this very code. */
export const listLotsOfCode = async (studioId: string, productId: string, code: string) => {
  const page = await request('GET', '/studios/{studioId}/lots', { studioId, productId, code, limit: most });
  return page.items;
};

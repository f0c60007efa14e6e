import type { BodyOf } from '../../service/operations.js';
import { request } from '../../service/request.js';

export type WarningDays = Omit<BodyOf<'PUT', '/studios/{studioId}/date-thresholds/{productId}'>, 'id'>;

/** Products that have days of warning of their own. */
export const listWarnings = (studioId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/date-thresholds', { studioId, after });
export const setWarning = (studioId: string, productId: string, id: string, days: WarningDays) =>
  request('PUT', '/studios/{studioId}/date-thresholds/{productId}', { studioId, productId }, { id, ...days });
export const removeWarning = (studioId: string, productId: string, id: string, version: number) =>
  request(
    'DELETE',
    '/studios/{studioId}/date-thresholds/{productId}',
    { studioId, productId },
    { id, version },
  );

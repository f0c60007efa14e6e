import type { DateThresholdView } from '../../../stock/date-thresholds/date-thresholds.views.js';
import type { BodyOf } from '../../service/operations.js';
import { request } from '../../service/request.js';

export type WarningDays = Omit<BodyOf<'PUT', '/studios/{studioId}/date-thresholds/{productId}'>, 'id'>;

/** Products that have days of warning of their own. */
export const listWarnings = (studioId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/date-thresholds', { studioId, after });
/** What is set of one product, on whichever page of the list it stands. */
export async function findWarning(
  studioId: string,
  productId: string,
): Promise<DateThresholdView | undefined> {
  let after: string | undefined;
  for (;;) {
    const { items, next } = await listWarnings(studioId, after);
    const found = items.find((each) => each.productId === productId);
    if (found !== undefined || next === null) return found;
    after = next;
  }
}
export const setWarning = (studioId: string, productId: string, id: string, days: WarningDays) =>
  request('PUT', '/studios/{studioId}/date-thresholds/{productId}', { studioId, productId }, { id, ...days });
export const removeWarning = (studioId: string, productId: string, id: string, version: number) =>
  request(
    'DELETE',
    '/studios/{studioId}/date-thresholds/{productId}',
    { studioId, productId },
    { id, version },
  );

import type { EnrolledTabletView } from '../../identity/tablets/tablets.views.js';
import { isProblem } from '../service/problem.js';
import { request } from '../service/request.js';

/** The tablet this browser is enrolled as; null when it is none. */
export async function askWhichTablet(): Promise<EnrolledTabletView | null> {
  try {
    return await request('GET', '/tablet', {});
  } catch (error) {
    if (isProblem(error, 'not-found')) return null;
    throw error;
  }
}

/** Signs somebody in on the tablet. */
export const switchTo = (shown: { badge: string } | { personId: string; pin: string }) =>
  request('POST', '/tablet/switch', {}, shown);

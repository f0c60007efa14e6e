import type { BalanceFigure } from '../../../../recalls/balance/balance-account.js';
import { request } from '../../../service/request.js';

export const showBalance = (studioId: string, recallId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/recalls/{recallId}/balance', {
    studioId,
    recallId,
    ...(after !== undefined && { after }),
  });

/** The movements behind one figure of a lot, the latest first. */
export const listMovementsBehind = (
  studioId: string,
  recallId: string,
  lotId: string,
  kind: BalanceFigure,
  after: string | undefined,
) =>
  request('GET', '/studios/{studioId}/recalls/{recallId}/balance/{lotId}/movements', {
    studioId,
    recallId,
    lotId,
    kind,
    ...(after !== undefined && { after }),
  });

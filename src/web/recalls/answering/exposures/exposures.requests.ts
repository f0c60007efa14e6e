import type { Certainty } from '../../../../recalls/exposures/exposure-certainty.js';
import { request, requestFile } from '../../../service/request.js';

const afterOf = (after: string | undefined) => (after === undefined ? {} : { after });

export const listExposedClients = (
  studioId: string,
  recallId: string,
  certainty: Certainty | undefined,
  after: string | undefined,
) =>
  request('GET', '/studios/{studioId}/recalls/{recallId}/exposed-clients', {
    studioId,
    recallId,
    ...(certainty !== undefined && { certainty }),
    ...afterOf(after),
  });

/** @param clientId left out: of all clients */
export const listExposedSessions = (
  studioId: string,
  recallId: string,
  clientId: string | undefined,
  after: string | undefined,
) =>
  request('GET', '/studios/{studioId}/recalls/{recallId}/exposures', {
    studioId,
    recallId,
    ...(clientId !== undefined && { clientId }),
    ...afterOf(after),
  });

export const listPlannedSessions = (studioId: string, recallId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/recalls/{recallId}/planned-sessions', {
    studioId,
    recallId,
    ...afterOf(after),
  });

export const exposuresAsCsv = (studioId: string, recallId: string) =>
  requestFile('GET', '/studios/{studioId}/recalls/{recallId}/exposures.csv', { studioId, recallId });

export const exposuresAsSpreadsheet = (studioId: string, recallId: string) =>
  requestFile('GET', '/studios/{studioId}/recalls/{recallId}/exposures.xlsx', { studioId, recallId });

import type { ErasureGround, ErasureOverride } from '../../clients/erasure-decision.js';
import { request, requestFile } from '../service/request.js';

export interface Who {
  name: string;
  contact: string | null;
  note: string | null;
}

/** Names and contacts go in the body: nothing personal ever stands in an address. */
export const findClients = (studioId: string, text: string) =>
  request('POST', '/studios/{studioId}/clients/search', { studioId }, { text });
export const listClients = (studioId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/clients', { studioId, after });
export const showClient = (studioId: string, clientId: string) =>
  request('GET', '/studios/{studioId}/clients/{clientId}', { studioId, clientId });
export const addClient = (studioId: string, id: string, who: Who) =>
  request('POST', '/studios/{studioId}/clients', { studioId }, { id, ...who });
export const changeClient = (
  studioId: string,
  clientId: string,
  change: Who & { id: string; version: number },
) => request('PATCH', '/studios/{studioId}/clients/{clientId}', { studioId, clientId }, change);

export const listTouchUps = (studioId: string, clientId: string) =>
  request('GET', '/studios/{studioId}/clients/{clientId}/touch-ups', { studioId, clientId });
export const traceClient = (studioId: string, clientId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/clients/{clientId}/trace', { studioId, clientId, after });

export const listClaims = (studioId: string, clientId: string) =>
  request('GET', '/studios/{studioId}/clients/{clientId}/legal-claims', { studioId, clientId });
export const noteClaim = (studioId: string, clientId: string, claim: { id: string; reason: string }) =>
  request('POST', '/studios/{studioId}/clients/{clientId}/legal-claims', { studioId, clientId }, claim);
export const endClaim = (
  studioId: string,
  clientId: string,
  claimId: string,
  end: { id: string; reason: string },
) =>
  request(
    'POST',
    '/studios/{studioId}/clients/{clientId}/legal-claims/{claimId}/end',
    { studioId, clientId, claimId },
    end,
  );

export const exportClient = (studioId: string, clientId: string) =>
  requestFile('GET', '/studios/{studioId}/clients/{clientId}/export', { studioId, clientId });
export const exportClientToRead = (studioId: string, clientId: string) =>
  requestFile('GET', '/studios/{studioId}/clients/{clientId}/export.html', { studioId, clientId });

export const foreseeErasure = (studioId: string, clientId: string, ground: ErasureGround) =>
  request('GET', '/studios/{studioId}/clients/{clientId}/erasure/preview', { studioId, clientId, ground });
export const askErasure = (
  studioId: string,
  clientId: string,
  wish: { id: string; ground: ErasureGround; overrides: ErasureOverride[] },
) => request('POST', '/studios/{studioId}/clients/{clientId}/erasure', { studioId, clientId }, wish);
export const listErasureAnswers = (studioId: string, clientId: string) =>
  request('GET', '/studios/{studioId}/clients/{clientId}/erasure', { studioId, clientId });
export const listAccesses = (studioId: string, clientId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/clients/{clientId}/accesses', { studioId, clientId, after });

import type { ClaimStep } from '../../reorder/claims/claim-steps.js';
import type { BodyOf } from '../service/operations.js';
import { request, requestFile } from '../service/request.js';

export type NewClaim = Omit<BodyOf<'POST', '/studios/{studioId}/claims'>, 'id'>;
export type ClaimChange = Omit<BodyOf<'PATCH', '/studios/{studioId}/claims/{claimId}'>, 'id'>;
type Settling = BodyOf<'POST', '/studios/{studioId}/claims/{claimId}/settled'>;

export const suggestedClaims = (studioId: string) =>
  request('GET', '/studios/{studioId}/claims/suggestions', { studioId });
export const listClaims = (
  studioId: string,
  state: 'standing' | 'settled' | 'dropped',
  after: string | undefined,
) => request('GET', '/studios/{studioId}/claims', { studioId, state, after });
export const showClaim = (studioId: string, claimId: string) =>
  request('GET', '/studios/{studioId}/claims/{claimId}', { studioId, claimId });
export const openClaim = (studioId: string, id: string, claim: NewClaim) =>
  request('POST', '/studios/{studioId}/claims', { studioId }, { id, ...claim });
export const changeClaim = (studioId: string, claimId: string, id: string, change: ClaimChange) =>
  request('PATCH', '/studios/{studioId}/claims/{claimId}', { studioId, claimId }, { id, ...change });
export const settleClaim = (studioId: string, claimId: string, settling: Settling) =>
  request('POST', '/studios/{studioId}/claims/{claimId}/settled', { studioId, claimId }, settling);

/** What needs nothing but the version it is done to. */
const steps = {
  send: (studioId: string, claimId: string, step: { id: string; version: number }) =>
    request('POST', '/studios/{studioId}/claims/{claimId}/sent', { studioId, claimId }, step),
  drop: (studioId: string, claimId: string, step: { id: string; version: number }) =>
    request('POST', '/studios/{studioId}/claims/{claimId}/dropped', { studioId, claimId }, step),
} satisfies Partial<Record<ClaimStep, unknown>>;
export type BareClaimStep = keyof typeof steps;
export const takeClaimStep = (
  studioId: string,
  claimId: string,
  step: BareClaimStep,
  given: { id: string; version: number },
) => steps[step](studioId, claimId, given);

export const claimLetter = (studioId: string, claimId: string) =>
  requestFile('GET', '/studios/{studioId}/claims/{claimId}/claim.txt', { studioId, claimId });

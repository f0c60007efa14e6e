import type { BodyOf } from '../service/operations.js';
import { request } from '../service/request.js';

export type TermsContent = Omit<BodyOf<'PUT', '/studios/{studioId}/supplier-terms/{supplierId}'>, 'id'>;
export type NewOffer = BodyOf<'POST', '/studios/{studioId}/offers'>;
export type OfferChange = BodyOf<'PATCH', '/studios/{studioId}/offers/{offerId}'>;

export const listTerms = (studioId: string, after?: string) =>
  request('GET', '/studios/{studioId}/supplier-terms', { studioId, after });
export const showTerms = (studioId: string, supplierId: string) =>
  request('GET', '/studios/{studioId}/supplier-terms/{supplierId}', { studioId, supplierId });
export const setTerms = (studioId: string, supplierId: string, id: string, terms: TermsContent) =>
  request(
    'PUT',
    '/studios/{studioId}/supplier-terms/{supplierId}',
    { studioId, supplierId },
    { id, ...terms },
  );

/** By product. */
export const listOffers = (
  studioId: string,
  supplierId: string,
  state: 'offered' | 'ended',
  after: string | undefined,
) => request('GET', '/studios/{studioId}/offers', { studioId, supplierId, state, after });
export const addOffer = (studioId: string, offer: NewOffer) =>
  request('POST', '/studios/{studioId}/offers', { studioId }, offer);
export const changeOffer = (studioId: string, offerId: string, change: OfferChange) =>
  request('PATCH', '/studios/{studioId}/offers/{offerId}', { studioId, offerId }, change);
export const endOffer = (studioId: string, offerId: string, id: string, version: number) =>
  request('POST', '/studios/{studioId}/offers/{offerId}/end', { studioId, offerId }, { id, version });

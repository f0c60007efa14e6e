import { request } from '../../service/request.js';

export const containerOfLabel = (studioId: string, code: string) =>
  request('GET', '/studios/{studioId}/containers/by-label/{code}', { studioId, code });
/** The first lot of a code; the answer says whether there are others. */
export const lotsOfCode = (studioId: string, code: string, productId?: string) =>
  request('GET', '/studios/{studioId}/lots', {
    studioId,
    code,
    ...(productId !== undefined && { productId }),
    limit: 1,
  });
/** The first product of which these words are said; the answer says whether there are others. */
export const productsOfText = (studioId: string, text: string) =>
  request('GET', '/studios/{studioId}/products', { studioId, text, archived: 'shown', limit: 1 });

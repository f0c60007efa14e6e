import type { ProductKind } from '../../catalogue/vocabulary.js';
import type { BodyOf } from '../service/operations.js';
import { request } from '../service/request.js';

export type NewProduct = BodyOf<'POST', '/studios/{studioId}/products'>;
export type ChangedProduct = BodyOf<'PATCH', '/studios/{studioId}/products/{productId}'>;
export type CompanyKind = 'maker' | 'supplier';

const pageSize = 50;

export const listProducts = (
  studioId: string,
  query: {
    text?: string;
    kind?: ProductKind;
    archived?: 'shown';
    limit?: number;
    after?: string | undefined;
  },
) => {
  const { after, ...asked } = query;
  return request('GET', '/studios/{studioId}/products', {
    studioId,
    limit: pageSize,
    ...asked,
    ...(after !== undefined && { after }),
  });
};
export const addProduct = (studioId: string, product: NewProduct) =>
  request('POST', '/studios/{studioId}/products', { studioId }, product);
export const changeProduct = (studioId: string, productId: string, change: ChangedProduct) =>
  request('PATCH', '/studios/{studioId}/products/{productId}', { studioId, productId }, change);
export const archiveProduct = (
  studioId: string,
  productId: string,
  version: { id: string; version: number },
) => request('POST', '/studios/{studioId}/products/{productId}/archive', { studioId, productId }, version);
export const restoreProduct = (
  studioId: string,
  productId: string,
  version: { id: string; version: number },
) => request('POST', '/studios/{studioId}/products/{productId}/restore', { studioId, productId }, version);
export const addGtin = (
  studioId: string,
  productId: string,
  gtin: { id: string; gtin: string; contentCount: number },
) => request('POST', '/studios/{studioId}/products/{productId}/gtins', { studioId, productId }, gtin);
export const correctGtin = (
  studioId: string,
  productId: string,
  gtin: string,
  correction: { id: string; version: number; contentCount?: number; productId?: string },
) =>
  request(
    'PATCH',
    '/studios/{studioId}/products/{productId}/gtins/{gtin}',
    { studioId, productId, gtin },
    correction,
  );

export const listCompanies = (studioId: string, kind: CompanyKind) =>
  kind === 'maker'
    ? request('GET', '/studios/{studioId}/makers', { studioId })
    : request('GET', '/studios/{studioId}/suppliers', { studioId });
export const addCompany = (studioId: string, kind: CompanyKind, company: { id: string; name: string }) =>
  kind === 'maker'
    ? request('POST', '/studios/{studioId}/makers', { studioId }, company)
    : request('POST', '/studios/{studioId}/suppliers', { studioId }, company);
export const renameCompany = (
  studioId: string,
  kind: CompanyKind,
  companyId: string,
  change: { id: string; version: number; name: string },
) =>
  kind === 'maker'
    ? request('PATCH', '/studios/{studioId}/makers/{makerId}', { studioId, makerId: companyId }, change)
    : request(
        'PATCH',
        '/studios/{studioId}/suppliers/{supplierId}',
        { studioId, supplierId: companyId },
        change,
      );

export const declareEquivalence = (
  studioId: string,
  declared: { id: string; productId: string; otherProductId: string; reason: string },
) => request('POST', '/studios/{studioId}/configurations/equivalences', { studioId }, declared);
export const withdrawEquivalence = (studioId: string, equivalenceId: string, write: { id: string }) =>
  request(
    'POST',
    '/studios/{studioId}/configurations/equivalences/{equivalenceId}/withdraw',
    { studioId, equivalenceId },
    write,
  );

/** What a symbol or a typed text names; nothing is recorded by it. */
export const readSymbol = (studioId: string, text: string) =>
  request('POST', '/studios/{studioId}/symbols/read', { studioId }, { text });

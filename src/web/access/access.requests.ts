import type { Permission, Role } from '../../identity/permissions.js';
import type { BodyOf } from '../service/operations.js';
import { request, requestFile } from '../service/request.js';

export interface NewPerson {
  id: string;
  name: string;
  role: Role;
  until?: string;
}

/** Only what is changed. */
export type PersonChange = BodyOf<'PATCH', '/studios/{studioId}/people/{personId}'>;

export interface NewToken {
  id: string;
  name: string;
  scopes: Permission[];
  days: number;
}

export const addPerson = (studioId: string, person: NewPerson) =>
  request('POST', '/studios/{studioId}/people', { studioId }, person);
export const changePerson = (studioId: string, personId: string, change: PersonChange) =>
  request('PATCH', '/studios/{studioId}/people/{personId}', { studioId, personId }, change);
/** The link is in this answer only. */
export const makeLink = (studioId: string, personId: string, id: string) =>
  request('POST', '/studios/{studioId}/people/{personId}/invitation', { studioId, personId }, { id });

export const listTokens = (studioId: string) => request('GET', '/studios/{studioId}/tokens', { studioId });
/** The token is in this answer only. */
export const makeToken = (studioId: string, token: NewToken) =>
  request('POST', '/studios/{studioId}/tokens', { studioId }, token);
export const revokeToken = (studioId: string, tokenId: string, id: string) =>
  request('POST', '/studios/{studioId}/tokens/{tokenId}/revocation', { studioId, tokenId }, { id });

/** Signs a person out wherever they are. */
export const signOutPerson = (studioId: string, personId: string, id: string) =>
  request('POST', '/studios/{studioId}/people/{personId}/sign-out', { studioId, personId }, { id });

export const listBadges = (studioId: string) => request('GET', '/studios/{studioId}/badges', { studioId });
/** @returns the badge to print, a PDF; the one of before works no more */
export const makeBadge = (studioId: string, personId: string, id: string) =>
  requestFile('POST', '/studios/{studioId}/people/{personId}/badge', { studioId, personId }, { id });
export const withdrawBadge = (studioId: string, personId: string, id: string) =>
  request('POST', '/studios/{studioId}/people/{personId}/badge/withdrawal', { studioId, personId }, { id });

export const listTablets = (studioId: string) => request('GET', '/studios/{studioId}/tablets', { studioId });
/** Makes this very browser a tablet, and signs out here. */
export const enrolTablet = (studioId: string, tablet: { id: string; name: string }) =>
  request('POST', '/studios/{studioId}/tablets', { studioId }, tablet);
export const renameTablet = (
  studioId: string,
  tabletId: string,
  change: { id: string; version: number; name: string },
) => request('PATCH', '/studios/{studioId}/tablets/{tabletId}', { studioId, tabletId }, change);
export const revokeTablet = (studioId: string, tabletId: string, id: string) =>
  request('POST', '/studios/{studioId}/tablets/{tabletId}/revocation', { studioId, tabletId }, { id });

import type { PersonView } from '../../identity/people.views.js';
import type { Permission, Role } from '../../identity/permissions.js';
import type {
  ApiTokenView,
  MadeApiTokenView,
  RevokedApiTokenView,
} from '../../identity/sign-in/api-tokens.views.js';
import type { MadeLinkView } from '../../identity/sign-in/sign-in.views.js';
import type { BadgeView, TabletView } from '../../identity/tablets/tablets.views.js';
import { request, requestFile } from '../service/request.js';

export interface NewPerson {
  id: string;
  name: string;
  role: Role;
  until?: string;
}

export interface PersonChange {
  id: string;
  version: number;
  name: string;
  role: Role;
  /** Null: no end. */
  until: string | null;
  state: PersonView['state'];
}

export interface NewToken {
  id: string;
  name: string;
  scopes: Permission[];
  days: number;
}

const studio = (studioId: string) => `/studios/${studioId}`;

export const listPeople = (studioId: string) => request<PersonView[]>('GET', `${studio(studioId)}/people`);
export const addPerson = (studioId: string, person: NewPerson) =>
  request<PersonView>('POST', `${studio(studioId)}/people`, person);
export const changePerson = (studioId: string, personId: string, change: PersonChange) =>
  request<PersonView>('PATCH', `${studio(studioId)}/people/${personId}`, change);
/** The link is in this answer only. */
export const makeLink = (studioId: string, personId: string, id: string) =>
  request<MadeLinkView>('POST', `${studio(studioId)}/people/${personId}/invitation`, { id });

export const listTokens = (studioId: string) => request<ApiTokenView[]>('GET', `${studio(studioId)}/tokens`);
/** The token is in this answer only. */
export const makeToken = (studioId: string, token: NewToken) =>
  request<MadeApiTokenView>('POST', `${studio(studioId)}/tokens`, token);
export const revokeToken = (studioId: string, tokenId: string, id: string) =>
  request<RevokedApiTokenView>('POST', `${studio(studioId)}/tokens/${tokenId}/revocation`, { id });

/** Signs a person out wherever they are. */
export const signOutPerson = (studioId: string, personId: string, id: string) =>
  request('POST', `${studio(studioId)}/people/${personId}/sign-out`, { id });

export const listBadges = (studioId: string) => request<BadgeView[]>('GET', `${studio(studioId)}/badges`);
/** @returns the badge to print, a PDF; the one of before works no more */
export const makeBadge = (studioId: string, personId: string, id: string) =>
  requestFile('POST', `${studio(studioId)}/people/${personId}/badge`, { id });
export const withdrawBadge = (studioId: string, personId: string, id: string) =>
  request('POST', `${studio(studioId)}/people/${personId}/badge/withdrawal`, { id });

export const listTablets = (studioId: string) => request<TabletView[]>('GET', `${studio(studioId)}/tablets`);
/** Makes this very browser a tablet, and signs out here. */
export const enrolTablet = (studioId: string, tablet: { id: string; name: string }) =>
  request<TabletView>('POST', `${studio(studioId)}/tablets`, tablet);
export const renameTablet = (
  studioId: string,
  tabletId: string,
  change: { id: string; version: number; name: string },
) => request<TabletView>('PATCH', `${studio(studioId)}/tablets/${tabletId}`, change);
export const revokeTablet = (studioId: string, tabletId: string, id: string) =>
  request<TabletView>('POST', `${studio(studioId)}/tablets/${tabletId}/revocation`, { id });

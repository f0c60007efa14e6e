import type { PasskeyView } from '../../identity/passkeys/passkeys.views.js';
import type { OwnSignInView } from '../../identity/sign-in/sign-in.views.js';
import type { OwnPinView } from '../../identity/tablets/tablets.views.js';
import { request } from '../service/request.js';

export const listSignIns = () => request<OwnSignInView[]>('GET', '/me/sign-ins');
/** Without an id: all but this browser's own. */
export const endSignIns = (signInId?: string) =>
  request('POST', '/me/sign-ins/end', signInId === undefined ? {} : { signInId });

/** Without the current one by whoever has none. */
export const changePassword = (given: { currentPassword?: string; newPassword: string }) =>
  request('POST', '/me/password', given);
export const removePassword = () => request('POST', '/me/password/removal');

export const listPasskeys = () => request<PasskeyView[]>('GET', '/me/passkeys');
export const renamePasskey = (passkeyId: string, given: { name: string; version: number }) =>
  request('PATCH', `/me/passkeys/${passkeyId}`, given);
export const removePasskey = (passkeyId: string) => request('POST', `/me/passkeys/${passkeyId}/removal`);

export const showPin = (studioId: string) => request<OwnPinView>('GET', `/me/studios/${studioId}/pin`);
export const choosePin = (studioId: string, pin: string) =>
  request<OwnPinView>('PUT', `/me/studios/${studioId}/pin`, { pin });
export const removePin = (studioId: string) =>
  request<OwnPinView>('POST', `/me/studios/${studioId}/pin/removal`);

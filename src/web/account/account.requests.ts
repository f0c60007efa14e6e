import { request } from '../service/request.js';

export const listSignIns = () => request('GET', '/me/sign-ins', {});
/** Without an id: all but this browser's own. */
export const endSignIns = (signInId?: string) =>
  request('POST', '/me/sign-ins/end', {}, signInId === undefined ? {} : { signInId });

/** Without the current one by whoever has none. */
export const changePassword = (given: { currentPassword?: string; newPassword: string }) =>
  request('POST', '/me/password', {}, given);
export const removePassword = () => request('POST', '/me/password/removal', {});

export const listPasskeys = () => request('GET', '/me/passkeys', {});
export const renamePasskey = (passkeyId: string, given: { name: string; version: number }) =>
  request('PATCH', '/me/passkeys/{passkeyId}', { passkeyId }, given);
export const removePasskey = (passkeyId: string) =>
  request('POST', '/me/passkeys/{passkeyId}/removal', { passkeyId });

export const showPin = (studioId: string) => request('GET', '/me/studios/{studioId}/pin', { studioId });
export const choosePin = (studioId: string, pin: string) =>
  request('PUT', '/me/studios/{studioId}/pin', { studioId }, { pin });
export const removePin = (studioId: string) =>
  request('POST', '/me/studios/{studioId}/pin/removal', { studioId });

import type { OwnSignInView } from '../../identity/sign-in/sign-in.views.js';
import { request } from '../service/request.js';

export const listSignIns = () => request<OwnSignInView[]>('GET', '/me/sign-ins');
/** Without an id: all but this browser's own. */
export const endSignIns = (signInId?: string) =>
  request('POST', '/me/sign-ins/end', signInId === undefined ? {} : { signInId });
export const changePassword = (given: { currentPassword: string; newPassword: string }) =>
  request('POST', '/me/password', given);

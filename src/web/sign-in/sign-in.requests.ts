import { request } from '../service/request.js';

export interface NewAccount {
  signInName: string;
  password: string;
}

export interface SetUp extends NewAccount {
  secret: string;
  studioName: string;
  timeZone: string;
  ownerName: string;
}

/** Nothing is shown before it is answered, so a page that opens where the network is bad waits for it only so long. */
export const askWhoIsSignedIn = () => request('GET', '/me', {}, undefined, { limitMilliseconds: 5_000 });
export const askWhetherSetUpIsOpen = () => request('GET', '/set-up', {});
export const setUp = (given: SetUp) => request('POST', '/set-up', {}, given);
export const signIn = (given: NewAccount) => request('POST', '/sign-in', {}, given);
export const signOut = () => request('POST', '/sign-out', {}, undefined, { limitMilliseconds: 5_000 });
export const lookAtInvitation = (secret: string) => request('POST', '/invitation/look', {}, { secret });
/** Without a password by whoever is signed in; without a name by whoever needs a new password only. */
export const acceptInvitation = (given: { secret: string } & Partial<NewAccount>) =>
  request('POST', '/invitation/accept', {}, given);

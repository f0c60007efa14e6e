import type { Permission, Role } from '../permissions.js';
import type { SignInMethod } from './sign-in-method.js';

export class StandingView {
  studioId: string;
  studioName: string;
  personId: string;
  role: Role;
  /** What the requester may do there, by role, token or tablet. */
  permissions: Permission[];
  /** The studio asks for a passkey and the requester signed in without one: nothing may be done there until then. */
  passkeyNeeded: boolean;
  /** The last day; null: no end. */
  until: string | null;
}

export class RequesterView {
  /** Null for a token. */
  accountId: string | null;
  /** Null for a token, and on a shared tablet. */
  signInName: string | null;
  /** Whether the account can sign in by password; null for a token, and on a shared tablet. */
  hasPassword: boolean | null;
  method: SignInMethod | 'token';
  studios: StandingView[];
}

export class OwnSignInView {
  id: string;
  method: SignInMethod;
  /** What the browser said of itself. */
  device: string;
  onTablet: boolean;
  createdAt: string;
  /** To a few minutes. */
  lastSeenAt: string;
  expiresAt: string;
  /** Whether it is the one that asks. */
  isThis: boolean;
}

export class SetUpStateView {
  /** Whether the first owner has still to set things up. */
  isOpen: boolean;
}

export class InvitationView {
  /** `new account`: a sign-in name and password are chosen; `new password`: only a password. */
  asks: 'new account' | 'new password';
  studioName: string;
  expiresAt: string;
}

export class MadeLinkView {
  id: string;
  expiresAt: string;
  /** Shown in this answer and never again. It works once. */
  link: string;
}

export class SignedOutView {
  personId: string;
}

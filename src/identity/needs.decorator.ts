import { applyDecorators, SetMetadata } from '@nestjs/common';
import { ApiExtension } from '@nestjs/swagger';
import type { Permission } from './permissions.js';

/**
 * `anyone`: without signing in. `signed in`: whoever signed in, about themselves. `in person`: somebody at a browser of
 * their own, about their account; `in person, recently`: who also signed in lately, with a passkey if they have one. Else the
 * permission that is needed in the studio of the address.
 */
export type Admission = Permission | 'anyone' | 'signed in' | 'in person' | 'in person, recently';

export const admissionKey = 'lotward:admission';

function admits(admission: Admission) {
  return applyDecorators(
    SetMetadata(admissionKey, admission),
    ApiExtension('x-lotward-permission', admission),
  );
}

/** Lets a route be used by those whose role has the permission in the studio of the address. */
export const Needs = (permission: Permission) => admits(permission);

/** Lets a route be used by whoever signed in; it concerns only themselves. */
export const NeedsSignIn = () => admits('signed in');

/** Lets a route be used by somebody at a browser of their own: no program, no shared tablet. */
export const NeedsOwnBrowser = () => admits('in person');

/** As NeedsOwnBrowser, by somebody who signed in lately: for what changes how they sign in. */
export const NeedsRecentSignIn = () => admits('in person, recently');

/** Lets a route be used without signing in. */
export const OpenToAnyone = () => admits('anyone');

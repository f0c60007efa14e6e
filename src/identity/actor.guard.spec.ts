import type { ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { describe, expect, it } from 'vitest';
import { Problem } from '../platform/problem.js';
import { ActorGuard, type StudioActor } from './actor.guard.js';
import { Needs, NeedsOwnBrowser, NeedsRecentSignIn, NeedsSignIn, OpenToAnyone } from './needs.decorator.js';
import { type Permission, permissions, permissionsOf, type Role } from './permissions.js';
import type { Credentials, Requester } from './sign-in/credentials.service.js';
import type { RecentSignIns } from './sign-in/recent-sign-ins.service.js';
import type { SignedIn } from './sign-in/sign-ins.service.js';
import type { Standings } from './sign-in/standings.service.js';

class Routes {
  withoutEntry(): void {}

  @OpenToAnyone()
  open(): void {}

  @NeedsSignIn()
  ofOneself(): void {}

  @NeedsOwnBrowser()
  inPerson(): void {}

  @NeedsRecentSignIn()
  inPersonRecently(): void {}

  @Needs('work the tray')
  trayWork(): void {}
}

const studioId = '01936f3a-5b7c-7d2e-8f10-2a3b4c5d6e7f';
const browser = {
  signInId: 's',
  accountId: 'a',
  accountStudioId: 'b',
  method: 'password',
  since: '2026-03-01T09:30:00.000Z',
  tablet: null,
} as const;
const ownBrowser: Requester = { browser };
const sharedTablet: Requester = { browser: { ...browser, tablet: { id: 't', studioId } } satisfies SignedIn };
const program: Requester = { program: { tokenId: 't', studioId, personId: 'p', scopes: permissions } };

interface Asked {
  requester: Requester;
  /** Null: no active person of the studio. */
  role: Role | null;
  address: string;
  /** The studio asks for a passkey, and the requester signed in without. */
  passkeyNeeded: boolean;
  /** The requester has to sign in again before they change how they sign in. */
  isStale: boolean;
}

/** Lets the guard judge one request, and tells what it left on it. */
async function judge(route: keyof Routes, given: Partial<Asked> = {}) {
  const { requester, role = 'owner', address = studioId, passkeyNeeded = false, isStale = false } = given;
  const standing = (id: string) => ({
    studioId: id,
    studioName: 'Lumen',
    chainId: 'c',
    timeZone: 'UTC',
    personId: 'p',
    role: role as Role,
    until: null,
    may: new Set<Permission>(passkeyNeeded ? [] : permissionsOf(role as Role)),
    passkeyNeeded,
  });
  const guard = new ActorGuard(
    new Reflector(),
    {
      requester: async () => {
        if (!requester) throw new Error('somebody was looked for');
        return requester;
      },
    } as unknown as Credentials,
    { in: async (id: string) => (role === null ? undefined : standing(id)) } as unknown as Standings,
    {
      require: async () => {
        if (isStale) throw new Problem(403, 'recent-sign-in-needed', 'Sign in again.');
      },
    } as unknown as RecentSignIns,
  );
  const request: { params: object; routeOptions: object; headers: object; actor?: StudioActor } = {
    params: { studioId: address },
    routeOptions: { url: '/here' },
    headers: {},
  };
  const context = {
    getHandler: () => Routes.prototype[route],
    switchToHttp: () => ({ getRequest: () => request, getResponse: () => ({}) }),
  } as unknown as ExecutionContext;
  return { admitted: await guard.canActivate(context), actor: request.actor };
}

async function refusal(route: keyof Routes, given: Partial<Asked>): Promise<[number, string]> {
  const problem = await judge(route, given).then(
    () => Promise.reject(new Error('It was admitted.')),
    (error: Problem) => error,
  );
  return [problem.status, problem.code];
}

describe('the guard', () => {
  it('refuses a route without an entry to everybody, the owner too', async () => {
    await expect(judge('withoutEntry', { requester: ownBrowser })).rejects.toThrow(
      '/here does not say who may use it.',
    );
  });

  it('lets an open route be used without looking who asks', async () => {
    expect(await judge('open')).toEqual({ admitted: true, actor: undefined });
  });

  it.each([
    ['a browser', ownBrowser],
    ['a shared tablet', sharedTablet],
    ['a program', program],
  ])('lets %s ask about itself, without an actor of any studio', async (_, requester) => {
    expect(await judge('ofOneself', { requester })).toEqual({ admitted: true, actor: undefined });
  });

  it('lets only somebody at a browser of their own at their account', async () => {
    expect((await judge('inPerson', { requester: ownBrowser })).admitted).toBe(true);
    expect(await refusal('inPerson', { requester: sharedTablet })).toEqual([403, 'not-allowed']);
    expect(await refusal('inPerson', { requester: program })).toEqual([403, 'not-allowed']);
  });

  it('lets somebody change how they sign in only soon after they did', async () => {
    expect((await judge('inPersonRecently', { requester: ownBrowser })).admitted).toBe(true);
    expect(await refusal('inPersonRecently', { requester: ownBrowser, isStale: true })).toEqual([
      403,
      'recent-sign-in-needed',
    ]);
    expect(await refusal('inPersonRecently', { requester: sharedTablet })).toEqual([403, 'not-allowed']);
    expect(await refusal('inPersonRecently', { requester: program })).toEqual([403, 'not-allowed']);
  });

  it('tells whoever signed in without a passkey that the studio asks for one', async () => {
    const asked = { requester: ownBrowser, role: 'owner', passkeyNeeded: true } as const;
    expect(await refusal('trayWork', asked)).toEqual([403, 'passkey-needed']);
  });

  it('makes the actor of whoever has the permission, and says whether they see clients', async () => {
    const { actor } = await judge('trayWork', { requester: ownBrowser, role: 'artist' });
    expect(actor).toMatchObject({ studioId, chainId: 'c', personId: 'p', via: 'api', seesClients: true });
  });

  it('refuses whoever lacks the permission, naming who has it', async () => {
    const asked = { requester: ownBrowser, role: 'auditor' } as const;
    expect(await refusal('trayWork', asked)).toEqual([403, 'not-allowed']);
    await expect(judge('trayWork', asked)).rejects.toMatchObject({
      detail: expect.stringContaining('owner, manager, artist'),
    });
  });

  it('does not tell a studio of others from one that does not exist, or an id from anything else', async () => {
    expect(await refusal('trayWork', { requester: ownBrowser, role: null })).toEqual([404, 'not-found']);
    expect(await refusal('trayWork', { requester: ownBrowser, address: 'lumen' })).toEqual([
      404,
      'not-found',
    ]);
  });

  it('takes a studio id in capitals for what it is', async () => {
    const { actor } = await judge('trayWork', { requester: ownBrowser, address: studioId.toUpperCase() });
    expect(actor?.studioId).toBe(studioId);
  });
});

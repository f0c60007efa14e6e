import { type CanActivate, createParamDecorator, type ExecutionContext, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { isUUID } from 'class-validator';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Actor } from '../platform/actor.js';
import { notFound, Problem } from '../platform/problem.js';
import { type Admission, admissionKey } from './needs.decorator.js';
import { type Permission, roleMay, roles } from './permissions.js';
import { Credentials, type Requester } from './sign-in/credentials.service.js';
import { RecentSignIns } from './sign-in/recent-sign-ins.service.js';
import type { SignedIn } from './sign-in/sign-ins.service.js';
import { Standings } from './sign-in/standings.service.js';

/**
 * Says in whose name a request is made, where it was kept on a device before it was sent: somebody else may have signed in
 * there since.
 */
const personHeader = 'lotward-person';

/** A request as the guard leaves it. */
interface AdmittedRequest extends FastifyRequest {
  requester?: Requester;
  actor?: StudioActor;
}

/** An Actor who is a person, with what they may do here. */
export interface StudioActor extends Actor {
  personId: string;
  may: ReadonlySet<Permission>;
}

/**
 * The one place where requests are admitted and an Actor is made. Guarantees:
 * - a route that does not say who may use it is refused to everybody;
 * - a studio in which the requester is no active person does not exist for them: 404, whatever else is asked;
 * - in a studio that asks for passkeys, who signed in at a browser without one may do nothing;
 * - what says in whose name it was done is recorded in that name or not at all;
 * - a program may do what its person may and its scopes allow, an enrolled tablet only tray work.
 */
@Injectable()
export class ActorGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly credentials: Credentials,
    private readonly standings: Standings,
    private readonly recent: RecentSignIns,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const http = context.switchToHttp();
    const request = http.getRequest<AdmittedRequest>();
    const admission = this.reflector.get<Admission | undefined>(admissionKey, context.getHandler());
    if (admission === undefined) throw new Error(`${request.routeOptions.url} does not say who may use it.`);
    if (admission === 'anyone') return true;
    const requester = await this.credentials.requester(request, http.getResponse<FastifyReply>());
    request.requester = requester;
    if (admission === 'signed in') return true;
    if (admission === 'in person' || admission === 'in person, recently') {
      const browser = ownBrowser(requester);
      if (admission === 'in person, recently') await this.recent.require(browser);
      return true;
    }
    const { studioId } = request.params as { studioId: string };
    request.actor = await this.actorIn(studioId, requester);
    const { may, personId } = request.actor;
    const meant = request.headers[personHeader];
    if (meant !== undefined && meant !== personId) throw signedInAsAnother();
    if (!may.has(admission)) throw notAllowed(admission);
    return true;
  }

  /** @throws Problem not-found unless the requester is an active person of the studio */
  private async actorIn(studioId: string, requester: Requester): Promise<StudioActor> {
    const standing = isUUID(studioId)
      ? await this.standings.in(studioId.toLowerCase(), requester)
      : undefined;
    if (!standing) throw notFound('studio', studioId.slice(0, 60));
    const { studioName: _, role: __, until: ___, passkeyNeeded, ...known } = standing;
    if (passkeyNeeded) {
      throw new Problem(
        403,
        'passkey-needed',
        'This studio asks everybody for a passkey: add one in your account, then sign in with it.',
      );
    }
    return { ...known, via: 'api', seesClients: standing.may.has('read clients') };
  }
}

/**
 * Somebody at a browser of their own.
 * @throws Problem not-allowed
 */
export function ownBrowser(requester: Requester): SignedIn {
  if ('browser' in requester && requester.browser.tablet === null) return requester.browser;
  throw new Problem(
    403,
    'not-allowed',
    'This is for somebody who signed in at a browser of their own, not for a token or a shared tablet.',
  );
}

function signedInAsAnother(): Problem {
  return new Problem(
    403,
    'signed-in-as-another',
    'This was done by somebody else than who is signed in here now. It is accepted when they sign in again.',
  );
}

/**
 * For a route that asks for a further permission by what is in the request.
 * @throws Problem not-allowed
 */
export function refuseWithout({ may }: StudioActor, permission: Permission): void {
  if (!may.has(permission)) throw notAllowed(permission);
}

function notAllowed(permission: Permission): Problem {
  const allowed = roles.filter((role) => roleMay(role, permission));
  return new Problem(
    403,
    'not-allowed',
    `This needs the permission to ${permission}, which is given to: ${allowed.join(', ')}. Ask one of them, or sign in at a browser of your own if this is a shared tablet.`,
  );
}

/** The Actor of the request, for a handler under `/studios/{studioId}`. */
export const CurrentActor = createParamDecorator((_: unknown, context: ExecutionContext): StudioActor => {
  const { actor } = context.switchToHttp().getRequest<AdmittedRequest>();
  if (!actor) throw new Error('This route has no studio in its address, so it has no actor.');
  return actor;
});

/** Who makes the request, for a handler that is about themselves. */
export const CurrentRequester = createParamDecorator((_: unknown, context: ExecutionContext): Requester => {
  const { requester } = context.switchToHttp().getRequest<AdmittedRequest>();
  if (!requester) throw new Error('This route is open to anyone, so nobody is known to make the request.');
  return requester;
});

/** The browser that makes the request, for a handler that needs somebody in person. */
export const CurrentBrowser = createParamDecorator((_: unknown, context: ExecutionContext): SignedIn => {
  const { requester } = context.switchToHttp().getRequest<AdmittedRequest>();
  if (!requester || !('browser' in requester)) throw new Error('This route admits only somebody in person.');
  return requester.browser;
});

/**
 * Loaded into the service before it starts (`--import`), admits every request to a studio as one person of it, without
 * looking at what it presents: what the checks of signing in cost shows against it. Only the bench does this; the
 * service has no setting for it. BENCH_PERSON is the person's id.
 */
import type { ExecutionContext } from '@nestjs/common';
import { ActorGuard, type StudioActor } from '../../src/identity/actor.guard.js';
import { permissions } from '../../src/identity/permissions.js';
import type { Standings } from '../../src/identity/sign-in/standings.service.js';

const personId = process.env.BENCH_PERSON ?? '';
const actors = new Map<string, StudioActor>();

async function actorIn(standings: Standings, studioId: string): Promise<StudioActor> {
  const program = { tokenId: '', studioId, personId, scopes: permissions };
  const standing = await standings.in(studioId, { program });
  if (!standing) throw new Error(`The studio ${studioId} has no person ${personId}.`);
  const { chainId, timeZone, may } = standing;
  return { studioId, chainId, timeZone, personId, may, via: 'api', seesClients: true };
}

interface Admitted {
  params: { studioId?: string };
  actor: StudioActor;
}

const { canActivate } = ActorGuard.prototype;

ActorGuard.prototype.canActivate = async function admit(this: ActorGuard, context: ExecutionContext) {
  const request = context.switchToHttp().getRequest<Admitted>();
  const { studioId } = request.params;
  if (studioId === undefined) return canActivate.call(this, context);
  let actor = actors.get(studioId);
  if (!actor) {
    // biome-ignore lint/complexity/useLiteralKeys: it is private
    actor = await actorIn(this['standings'], studioId);
    actors.set(studioId, actor);
  }
  request.actor = actor;
  return true;
};

import { type CanActivate, createParamDecorator, type ExecutionContext, Injectable } from '@nestjs/common';
import { isUUID } from 'class-validator';
import type { FastifyRequest } from 'fastify';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import { notFound, Problem } from '../platform/problem.js';

/** Header that names the person who acts, while nobody signs in. */
export const personHeader = 'lotward-person';

interface ActingRequest extends FastifyRequest {
  actor?: Actor;
}

/**
 * The one place where an Actor is made. Until sign-in exists the service listens on loopback only, and a request acts
 * for the person named in the header `Lotward-Person`, else for the studio's first owner.
 */
@Injectable()
export class ActorGuard implements CanActivate {
  constructor(private readonly database: Database) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const request = context.switchToHttp().getRequest<ActingRequest>();
    const studioId = (request.params as { studioId?: string } | undefined)?.studioId;
    if (studioId === undefined) return true;
    if (!isUUID(studioId)) throw notFound('studio', studioId.slice(0, 60));
    const named = request.headers[personHeader];
    if (named !== undefined && !isUUID(named)) {
      throw new Problem(403, 'not-allowed', 'The header Lotward-Person does not hold the id of a person.');
    }
    const personId = typeof named === 'string' ? named.toLowerCase() : null;
    const [found] = await this.database.read<{
      chain_id: string;
      time_zone: string;
      person_id: string | null;
    }>(
      `SELECT studio.chain_id, studio.time_zone, (
         SELECT person.id FROM person
         WHERE person.studio_id = studio.id AND person.state = 'active'
           AND (person.id = $2 OR ($2 IS NULL AND person.role = 'owner'))
         ORDER BY person.created_at, person.id LIMIT 1) AS person_id
       FROM studio WHERE studio.id = $1`,
      [studioId.toLowerCase(), personId],
    );
    if (!found) throw notFound('studio', studioId);
    if (found.person_id === null) {
      throw new Problem(403, 'not-allowed', 'The person named does not work in this studio (any more).');
    }
    request.actor = {
      studioId: studioId.toLowerCase(),
      chainId: found.chain_id,
      timeZone: found.time_zone,
      personId: found.person_id,
      via: 'api',
    };
    return true;
  }
}

/** The Actor of the request, for a handler under `/studios/{studioId}`. */
export const CurrentActor = createParamDecorator((_: unknown, context: ExecutionContext): Actor => {
  const { actor } = context.switchToHttp().getRequest<ActingRequest>();
  if (!actor) throw new Error('This route has no studio in its address, so it has no actor.');
  return actor;
});

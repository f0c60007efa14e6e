import { type FastifyReply, type FastifyRequest, LogController } from 'fastify';
import type { Actor } from './actor.js';
import { refusalOf } from './problem.filter.js';

/** Refusals by which somebody may be trying doors. */
const worthAWarning: ReadonlySet<number> = new Set([401, 403, 429]);

function levelOf(status: number): 'info' | 'warn' | 'error' {
  if (status >= 500) return 'error';
  return worthAWarning.has(status) ? 'warn' : 'info';
}

/**
 * One line for each answer: who asked for what, and how it went. The route is its pattern, never the address as it was
 * typed, which may hold anything; neither bodies nor queries are logged. From where it was asked is logged of refusals.
 */
export class RequestLog extends LogController {
  constructor() {
    super({ requestIdLogLabel: 'requestId' });
  }

  override incomingRequest(): void {}

  override routeNotFound(): void {}

  override requestCompleted(
    error: Error | null | undefined,
    request: FastifyRequest & { actor?: Actor },
    reply: FastifyReply,
  ): void {
    const { statusCode: status } = reply;
    const code = refusalOf(reply);
    reply.log[levelOf(status)](
      {
        method: request.method,
        route: request.routeOptions.url ?? null,
        status,
        ...(code === undefined ? {} : { code }),
        ...(error ? { cutOff: true } : {}),
        milliseconds: Math.round(reply.elapsedTime * 10) / 10,
        ...(request.actor === undefined
          ? {}
          : { studioId: request.actor.studioId, personId: request.actor.personId }),
        ...(status < 400 ? {} : { address: request.ip }),
      },
      'answered',
    );
  }
}

import { FastifyAdapter } from '@nestjs/platform-fastify';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { sendProblem } from './problem.filter.js';
import { Problem } from './problem.js';

/** A body larger than this is refused before it is read. */
const maximumBodyBytes = 1_048_576;

/** No request needs more; deeper ones would exhaust the stack of whatever walks them. */
const maximumDepth = 16;

function isTooDeep(body: unknown): boolean {
  let level = [body];
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > maximumDepth) return true;
    level = level.flatMap((value) =>
      value !== null && typeof value === 'object' ? Object.values(value) : [],
    );
  }
  return false;
}

/**
 * Names under which a service on loopback may be addressed. A page of another site can make a browser call a name of its
 * own that leads here; that name then stands in the Host header, and is refused.
 */
const loopbackNames = /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/i;

/** The HTTP server; what it refuses before any handler is a problem document too. */
export function makeHttpServer(): FastifyAdapter {
  const adapter = new FastifyAdapter({
    bodyLimit: maximumBodyBytes,
    frameworkErrors: (_error: Error, _request: FastifyRequest, reply: FastifyReply) =>
      sendProblem(
        reply,
        new Problem(
          400,
          'malformed-request',
          'The address cannot be read. Look at it again: it is too long, or badly encoded.',
        ),
      ),
  });
  adapter.getInstance().addHook('onRequest', (request, reply, done) => {
    const host = request.headers.host ?? '';
    if (loopbackNames.test(host)) return done();
    sendProblem(
      reply,
      new Problem(
        403,
        'not-allowed',
        `The service was addressed as "${host.slice(0, 60)}". It answers only to localhost, 127.0.0.1 and [::1] while nobody has to sign in.`,
      ),
    );
  });
  adapter.getInstance().addHook('preValidation', (request, reply, done) => {
    if (!isTooDeep(request.body)) return done();
    sendProblem(
      reply,
      new Problem(
        400,
        'malformed-request',
        `The body is nested more than ${maximumDepth} levels deep; no request here is. Look at what made it.`,
      ),
    );
  });
  return adapter;
}

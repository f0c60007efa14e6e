import { fastifyRateLimit } from '@fastify/rate-limit';
import type { FastifyInstance } from 'fastify';
import { sendProblem } from './problem.filter.js';
import { Problem } from './problem.js';

/**
 * Refuses what one address asks beyond so many requests a minute (of IPv6 one network of 64 bits). What leads nowhere
 * counts too, so that nobody looks for doors at leisure.
 * @param perMinute 0 for no limit
 */
export async function limitRequests(server: FastifyInstance, perMinute: number): Promise<void> {
  if (perMinute === 0) return;
  await server.register(fastifyRateLimit, { global: false, max: perMinute, timeWindow: '1 minute' });
  const count = server.createRateLimit();
  server.addHook('onRequest', async (request, reply) => {
    const counted = await count(request);
    if (counted.isAllowed || !counted.isExceeded) return;
    sendProblem(
      reply.header('retry-after', counted.ttlInSeconds),
      new Problem(
        429,
        'too-many-requests',
        `More than ${perMinute} requests came from your address within a minute. Wait ${counted.ttlInSeconds} s, then go on.`,
      ),
    );
    return reply;
  });
}

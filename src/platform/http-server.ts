import { fastifyHelmet } from '@fastify/helmet';
import { FastifyAdapter } from '@nestjs/platform-fastify';
import { isUUID } from 'class-validator';
import { type FastifyInstance, type FastifyReply, type FastifyRequest, fastify } from 'fastify';
import { v7 as uuidv7 } from 'uuid';
import { bodyFault } from './body-fault.js';
import type { Config } from './config.js';
import type { LargerBodyConfig } from './larger-body.decorator.js';
import type { Log } from './log.js';
import type { OpenRequests } from './open-requests.js';
import { sendProblem } from './problem.filter.js';
import { Problem } from './problem.js';
import type { ProcessRole } from './process-role.js';
import { limitRequests } from './rate-limit.js';
import { refusalAtTheDoor } from './refusal-at-the-door.js';
import { RequestLog } from './request-log.js';
import { apiPagePolicy, permissionsPolicy, securityHeaders } from './security-headers.js';
import { readTls } from './tls/tls-files.js';
import { refuseExpectation, refuseUnreadable } from './unreadable-request.js';

/** A body larger than this is refused before it is read, but on routes that say so themselves. */
const maximumBodyBytes = 1_048_576;

/** One part of an address; ids have 36 characters. */
const maximumParameterLength = 100;

/** The address and all headers together. */
const maximumHeaderBytes = 16_384;

/** So long a sender has for the headers, and for all of a request: who sends drop by drop is cut off. */
const headersMilliseconds = 20_000;
const requestMilliseconds = 60_000;
const lookAtSendersMilliseconds = 5_000;

/** A connection on which nothing moves for so long is given up, also when the other side does not read. */
const silentConnectionMilliseconds = 120_000;

const maximumConnections = 2_000;

/** What a caller may name its request by in the log is a UUID, so that nothing else can be written there. */
function requestIdOf(request: FastifyRequest['raw']): string {
  const given = request.headers['x-request-id'];
  return isUUID(given) ? String(given).toLowerCase() : uuidv7();
}

/** The headers that are the same on every answer: helmet is asked for them once, since it works them out each time. */
async function headersOfEveryAnswer(config: Config): Promise<[name: string, value: string][]> {
  const server = fastify();
  await server.register(fastifyHelmet, securityHeaders(config));
  server.get('/', (_request, reply) => reply.send(reply.raw.getHeaders()));
  const answer = await server.inject('/');
  await server.close();
  return [
    ...Object.entries(answer.json<Record<string, string>>()),
    ['permissions-policy', permissionsPolicy],
  ];
}

/** The HTTP server; what it refuses before any handler is a problem document too. */
export async function makeHttpServer(
  config: Config,
  log: Log,
  role: ProcessRole,
  openRequests: OpenRequests,
): Promise<FastifyAdapter> {
  const tls = readTls(config);
  const headers = await headersOfEveryAnswer(config);
  const setHeaders = (reply: FastifyReply) => {
    for (const [name, value] of headers) reply.raw.setHeader(name, value);
  };
  const limits = {
    maxHeaderSize: maximumHeaderBytes,
    headersTimeout: headersMilliseconds,
    connectionsCheckingInterval: lookAtSendersMilliseconds,
    // Node would refuse such a request without a word; the door says what is missing.
    requireHostHeader: false,
  };
  const adapter = new FastifyAdapter({
    ...(tls === undefined
      ? { http: limits }
      : { https: { ...limits, cert: tls.certificate, key: tls.key, minVersion: 'TLSv1.2' } }),
    bodyLimit: maximumBodyBytes,
    requestTimeout: requestMilliseconds,
    connectionTimeout: silentConnectionMilliseconds,
    routerOptions: { maxParamLength: maximumParameterLength },
    trustProxy: config.trustedProxies.length > 0 && config.trustedProxies,
    // The door says it itself, as a problem.
    return503OnClosing: false,
    loggerInstance: log,
    logController: new RequestLog(),
    genReqId: requestIdOf,
    frameworkErrors: (_error: Error, _request: FastifyRequest, reply: FastifyReply) => {
      setHeaders(reply);
      sendProblem(
        reply,
        new Problem(
          400,
          'malformed-request',
          'The address cannot be read. Look at it again: it is too long, or badly encoded.',
        ),
      );
    },
    clientErrorHandler: refuseUnreadable,
  });
  const server = adapter.getInstance() as unknown as FastifyInstance;
  server.server.maxConnections = maximumConnections;
  server.server.on('checkExpectation', refuseExpectation);
  server.addHook('onRoute', (route) => {
    const { largerBodyBytes } = (route.config ?? {}) as LargerBodyConfig;
    if (largerBodyBytes !== undefined) route.bodyLimit = largerBodyBytes;
  });
  // What remains is JSON, which no form of another site can send.
  server.removeContentTypeParser('text/plain');

  // For pages that need a policy of their own.
  await server.register(fastifyHelmet, { ...securityHeaders(config), global: false });
  server.addHook('onRequest', (request, reply, done) => {
    setHeaders(reply);
    void reply.header('x-request-id', request.id);
    if (request.url.startsWith('/api/docs')) reply.helmet({ contentSecurityPolicy: apiPagePolicy });
    else if (request.url.startsWith('/api/')) void reply.header('cache-control', 'no-store');
    done();
  });
  server.addHook('onRequest', (request, reply, done) => {
    const problem = refusalAtTheDoor(request, config, role);
    if (problem === undefined) {
      openRequests.begin();
      reply.raw.once('close', () => openRequests.end());
      return done();
    }
    // A sender that ended no request where it should would have its next bytes read as another one.
    void reply.header('connection', 'close');
    sendProblem(reply, problem);
  });
  await limitRequests(server, config.REQUESTS_PER_MINUTE);
  server.addHook('preValidation', (request, reply, done) => {
    const fault = bodyFault(request.body);
    if (fault === undefined) return done();
    sendProblem(reply, new Problem(400, 'malformed-request', fault));
  });
  return adapter;
}

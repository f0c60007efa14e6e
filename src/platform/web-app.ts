import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { fastifyStatic } from '@fastify/static';
import type { FastifyInstance } from 'fastify';
import type { Log } from './log.js';
import { webPagePolicy, workerPolicy } from './security-headers.js';

/** What the build leaves beside dist/service: one page, and files whose names change with their content. */
const folder = fileURLToPath(new URL('../web', import.meta.url));

/** Where the page says its style nonce, in `src/web/index.html`. */
const noncePlace = 'STYLE_NONCE';

const daySeconds = 86_400;
const yearSeconds = 365 * daySeconds;

/** Scripts that run beside the page; a browser holds each to the policy it came with, not to that of the page. */
const workerScript = /^\/assets\/[^/]+\.worker-[^/]+\.js$/;

/** Files whose names stay while their content changes: a browser asks each time whether they did. */
const namedFiles = [
  { path: '/service-worker.js', type: 'text/javascript; charset=utf-8', policy: workerPolicy },
  { path: '/manifest.webmanifest', type: 'application/manifest+json', policy: undefined },
];

/** Under these a path means one thing only; what is not there is not found. */
const withoutPages = /^\/(api|health|assets|icons)(\/|$)/;

/**
 * Serves the web app: its files to be kept for good, since another content has another name, and its one page at every
 * other address, never kept, so that an upgrade is seen at once. The page may write the styles that carry its nonce, and
 * each answer has a fresh one.
 */
export async function serveWebApp(server: FastifyInstance, log: Log): Promise<void> {
  const file = join(folder, 'index.html');
  if (!existsSync(file)) {
    log.warn('The pages for browsers are not built, so only the API is served. `npm start` builds them.');
    return;
  }
  const [before, after, ...more] = readFileSync(file, 'utf8').split(noncePlace);
  if (before === undefined || after === undefined || more.length > 0) {
    throw new Error(`${file} does not hold ${noncePlace} exactly once; build it again.`);
  }
  await server.register(async (assets) => {
    assets.addHook('onRequest', async (request, reply) => {
      const [path = ''] = request.url.split('?');
      if (workerScript.test(path)) reply.helmet({ contentSecurityPolicy: workerPolicy });
    });
    await assets.register(fastifyStatic, {
      root: join(folder, 'assets'),
      prefix: '/assets/',
      wildcard: false,
      decorateReply: false,
      // The build has left each file compressed beside it.
      preCompressed: true,
      immutable: true,
      maxAge: yearSeconds * 1000,
    });
  });
  await server.register(fastifyStatic, {
    root: join(folder, 'icons'),
    prefix: '/icons/',
    wildcard: false,
    decorateReply: false,
    maxAge: daySeconds * 1000,
  });
  for (const { path, type, policy } of namedFiles) {
    const content = readFileSync(join(folder, path));
    server.get(path, (_, reply) => {
      if (policy) reply.helmet({ contentSecurityPolicy: policy });
      return reply.type(type).header('cache-control', 'no-cache').send(content);
    });
  }
  server.get('/*', (request, reply) => {
    const [path = '/'] = request.url.split('?');
    if (withoutPages.test(path)) return reply.callNotFound();
    const nonce = randomBytes(16).toString('base64');
    reply.helmet({ contentSecurityPolicy: webPagePolicy(nonce) });
    return reply
      .type('text/html; charset=utf-8')
      .header('cache-control', 'no-store')
      .send(before + nonce + after);
  });
}

import type { FastifyRequest } from 'fastify';
import { namesThisService } from './addressed-host.js';
import type { Config } from './config.js';
import { isCrossSite } from './cross-site.js';
import { Problem } from './problem.js';
import type { ProcessRole } from './process-role.js';

/** Why a request goes no further than its headers, whatever it asks for; undefined when it may. */
export function refusalAtTheDoor(
  request: FastifyRequest,
  config: Config,
  role: ProcessRole,
): Problem | undefined {
  const { host, origin, 'sec-fetch-site': site } = request.headers;
  // While the service ends, it still tells how it is.
  if (role.ending && !request.url.startsWith('/health/')) {
    return new Problem(
      503,
      'not-ready',
      'The service is ending, so nothing was changed. Send the request again, with the same id, when it runs again.',
    );
  }
  // RFC 9112, 3.2 [M].
  if (host === undefined) {
    return new Problem(400, 'malformed-request', 'The request names no host. Send the header Host.');
  }
  if (!namesThisService(host, config.publicUrl, request.socket.localAddress)) {
    return new Problem(
      403,
      'not-allowed',
      `The service was addressed as "${host.slice(0, 60)}". It answers to localhost, to the address of the machine it is asked at, and to the host of PUBLIC_URL (${config.publicUrl}). Use one of those, or set PUBLIC_URL.`,
    );
  }
  const secFetchSite = site === undefined ? undefined : String(site);
  if (isCrossSite({ method: request.method, secFetchSite, origin, host }, config.publicUrl)) {
    return new Problem(
      403,
      'cross-site-request',
      `A page of another site${origin === undefined ? '' : ` (${origin.slice(0, 60)})`} asked for this, so nothing was changed. Do it from ${config.publicUrl} itself.`,
    );
  }
  return undefined;
}

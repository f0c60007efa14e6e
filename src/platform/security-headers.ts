import type { FastifyHelmetOptions } from '@fastify/helmet';
import type { Config } from './config.js';
import { isLoopback } from './loopback.js';

const yearSeconds = 31_536_000;

/** What a page of the service may load and do: only what the service itself serves, scripts and styles as files. */
const contentPolicy = {
  defaultSrc: ["'none'"],
  scriptSrc: ["'self'"],
  styleSrc: ["'self'"],
  imgSrc: ["'self'", 'data:', 'blob:'],
  fontSrc: ["'self'"],
  connectSrc: ["'self'"],
  mediaSrc: ["'self'", 'blob:'],
  workerSrc: ["'self'"],
  manifestSrc: ["'self'"],
  objectSrc: ["'none'"],
  frameAncestors: ["'none'"],
  baseUri: ["'none'"],
  formAction: ["'self'"],
};

/** The web app besides writes styles into its page, such as the theme's variables; they show the nonce of that page. */
export function webPagePolicy(nonce: string) {
  return {
    useDefaults: false,
    directives: { ...contentPolicy, styleSrc: ["'self'", `'nonce-${nonce}'`] },
  };
}

/** A worker may besides compile WebAssembly, as the reader of symbols does; no page may. */
export const workerPolicy = {
  useDefaults: false,
  directives: { ...contentPolicy, scriptSrc: ["'self'", "'wasm-unsafe-eval'"] },
};

/** The page that describes the API writes its styles into itself; it shows no one's data. */
export const apiPagePolicy = {
  useDefaults: false,
  directives: { ...contentPolicy, styleSrc: ["'self'", "'unsafe-inline'"] },
};

/** Features of the browser a page may use: the camera, for symbols; nothing else. */
export const permissionsPolicy =
  'camera=(self), microphone=(), geolocation=(), payment=(), usb=(), display-capture=()';

/** HTTPS from now on, also when somebody types http://. Never for loopback names: other programs are there too. */
function insistsOnTls(config: Config): boolean {
  return config.isSecure && !isLoopback(new URL(config.publicUrl).hostname);
}

/** Headers by which a browser protects what it is shown. OWASP ASVS 5.0, V3.4 [P]. */
export function securityHeaders(config: Config): FastifyHelmetOptions {
  return {
    contentSecurityPolicy: { useDefaults: false, directives: contentPolicy },
    strictTransportSecurity: insistsOnTls(config) && { maxAge: yearSeconds, includeSubDomains: true },
    referrerPolicy: { policy: 'no-referrer' },
    crossOriginOpenerPolicy: { policy: 'same-origin' },
    crossOriginResourcePolicy: { policy: 'same-origin' },
    xFrameOptions: { action: 'deny' },
  };
}

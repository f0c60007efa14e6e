/** Methods that by HTTP change nothing, and here do not. */
const safeMethods: ReadonlySet<string> = new Set(['GET', 'HEAD', 'OPTIONS']);

/** What a request tells about who sent it; headers as they came in. */
export interface Provenance {
  method: string;
  /** By Fetch Metadata: how the page that asks relates to the service. Pages cannot set it. */
  secFetchSite: string | undefined;
  origin: string | undefined;
  /** The Host header, known to name this service. */
  host: string | undefined;
}

/** Whether an origin is that of a Host header, whose port is left out when it is the usual one. */
function isOriginOf(origin: string, host: string): boolean {
  if (!URL.canParse(origin)) return false;
  const { protocol } = new URL(origin);
  if (!/^https?:$/.test(protocol) || !URL.canParse(`${protocol}//${host}`)) return false;
  return new URL(`${protocol}//${host}`).origin === origin.toLowerCase();
}

/**
 * Whether a browser was led by a page of another origin to ask for a change: its cookies come along with such a request,
 * whoever made it. By Fetch Metadata where the browser sends it, else by the Origin header; a request with neither does
 * not come from a page, and a program brings no cookies it was not given.
 *
 * OWASP Cross-Site Request Forgery Prevention Cheat Sheet, Fetch Metadata headers with a fallback to the origin [S].
 * @param publicUrl origin people reach the service at; a proxy may have put another Host in its place
 */
export function isCrossSite(request: Provenance, publicUrl: string): boolean {
  if (safeMethods.has(request.method)) return false;
  if (request.secFetchSite !== undefined) {
    return request.secFetchSite !== 'same-origin' && request.secFetchSite !== 'none';
  }
  if (request.origin === undefined) return false;
  return request.origin !== publicUrl && !isOriginOf(request.origin, request.host ?? '');
}

import type { Config } from './config.js';
import { isLoopback } from './loopback.js';
import { tlsRemarks } from './tls/tls-files.js';

/**
 * What has to be said aloud at every start, since it weakens what the service promises. Nothing of it keeps the service
 * from starting: whoever opens it beyond this machine has set HOST to do so.
 */
export function startRemarks(config: Config): string[] {
  const remarks = tlsRemarks(config);
  const speaksTls = config.tlsFiles !== undefined;
  const behindTlsProxy = config.isSecure && !speaksTls;
  const proxyIsKnown = config.TRUST_PROXY !== undefined;
  const reach = [config.HOST, new URL(config.publicUrl).hostname];
  const isBeyond = !reach.every(isLoopback);
  if (isBeyond && !speaksTls && !(behindTlsProxy && (proxyIsKnown || isLoopback(config.HOST)))) {
    remarks.push(
      `What goes over the network to this service is NOT ENCRYPTED: whoever is in the same network can read passwords, the names of clients and what was done to them, and act in the name of whoever is signed in. Passkeys and the camera do not work either. Do one of these:
  - make a certificate with \`npm run cli -- make-local-certificate\`;
  - or name one of yours in TLS_CERTIFICATE_FILE and TLS_KEY_FILE;
  - or put a reverse proxy that speaks TLS before the service, and set PUBLIC_URL to its https:// address and TRUST_PROXY to where it asks from.`,
    );
  }
  if (behindTlsProxy && !proxyIsKnown) {
    remarks.push(
      `PUBLIC_URL is ${config.publicUrl}, so a reverse proxy stands before the service, and TRUST_PROXY is not set: everybody seems to come from the proxy's address, so one who tries passwords, or asks too often, slows all down. Set TRUST_PROXY to where the proxy asks from, such as 127.0.0.1.`,
    );
  }
  return remarks;
}

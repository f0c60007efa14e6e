import { isIP } from 'node:net';
import { inAddress, isLoopback } from './loopback.js';

/** The host of a Host header without its port, in lower case; undefined when it is none. */
function hostOf(header: string): string | undefined {
  return /^(\[[0-9a-f:.]+\]|[^:[\]\s/@]+)(:\d{1,5})?$/.exec(header.toLowerCase())?.[1];
}

/** An IP address of a socket as it would stand in an address: `::ffff:192.168.1.20` is 192.168.1.20. */
function addressOf(socketAddress: string): string {
  const [address = ''] = socketAddress.replace(/^::ffff:(?=[\d.]+$)/i, '').split('%');
  return isIP(address) === 6 ? new URL(`http://${inAddress(address)}`).hostname : address;
}

/**
 * Whether a request names this service in its Host header: by a loopback name, by the host of its public address, or by
 * the very address of this machine it came in at. A page of another site can make a browser call a name of its own that
 * was made to lead here (DNS rebinding); that name then stands in the Host header.
 * @param header the Host header, which may be missing
 * @param publicUrl origin people reach the service at
 * @param localAddress address of this machine the connection was made to
 */
export function namesThisService(
  header: string | undefined,
  publicUrl: string,
  localAddress: string | undefined,
): boolean {
  const host = hostOf(header ?? '');
  if (host === undefined) return false;
  return (
    isLoopback(host) ||
    host === new URL(publicUrl).hostname ||
    (localAddress !== undefined && host === addressOf(localAddress))
  );
}

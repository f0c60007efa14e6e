import { BlockList, isIP } from 'node:net';

const loopback = new BlockList();
loopback.addSubnet('127.0.0.0', 8, 'ipv4');
loopback.addAddress('::1', 'ipv6');

/** Whether an address, as it is or as it stands in a URL, or the name `localhost` leads to this machine only. */
export function isLoopback(host: string): boolean {
  if (host.toLowerCase() === 'localhost') return true;
  const address = host.replace(/^\[|\]$/g, '');
  const version = isIP(address);
  return version !== 0 && loopback.check(address, version === 4 ? 'ipv4' : 'ipv6');
}

/** A host as it stands in an address: IPv6 in brackets. */
export function inAddress(host: string): string {
  return isIP(host) === 6 ? `[${host}]` : host;
}

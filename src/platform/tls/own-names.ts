import { hostname, networkInterfaces } from 'node:os';

/** By what name this machine is known to others in its network without anybody setting anything up: `studio.local`. */
export function localName(): string {
  const name = hostname().toLowerCase();
  return name.includes('.') ? name : `${name}.local`;
}

/** The addresses of this machine in its networks; those that hold on one link only are left out. */
export function localAddresses(): string[] {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ internal, scopeid }) => !internal && !scopeid)
    .map(({ address }) => address);
}

import { isIPv6 } from 'node:net';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addressNetwork } from './address-network.js';

describe('the network of an address', () => {
  it.each([
    ['192.0.2.7', '192.0.2.7'],
    ['::ffff:192.0.2.7', '192.0.2.7'],
    ['::FFFF:192.0.2.7', '192.0.2.7'],
    ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2'],
    ['2001:DB8:0001:0002::1', '2001:db8:1:2'],
    ['2001:db8::1', '2001:db8:0:0'],
    ['2001:db8::', '2001:db8:0:0'],
    ['::1', '0:0:0:0'],
    ['::', '0:0:0:0'],
    ['fe80::1%eth0', 'fe80:0:0:0'],
    ['64:ff9b::192.0.2.7', '64:ff9b:0:0'],
    ['unknown', 'unknown'],
  ])('of %s is %s', (address, network) => {
    expect(addressNetwork(address)).toBe(network);
  });

  it('is the same for every address somebody can give themselves, and another for their neighbours', () => {
    const group = fc.integer({ min: 0, max: 0xffff }).map((number) => number.toString(16));
    const four = fc.tuple(group, group, group, group);
    fc.assert(
      fc.property(four, four, four, four, (network, one, two, neighbours) => {
        const write = (first: string[], last: string[]) => {
          // As Node writes addresses: the longest zeros left out.
          const { hostname } = new URL(`http://[${[...first, ...last].join(':')}]`);
          return hostname.slice(1, -1);
        };
        const address = write(network, one);
        fc.pre(isIPv6(address) && !address.includes('.'));
        expect(addressNetwork(write(network, two))).toBe(addressNetwork(address));
        fc.pre(network.join() !== neighbours.join());
        expect(addressNetwork(write(neighbours, one))).not.toBe(addressNetwork(address));
      }),
    );
  });
});

import { describe, expect, it } from 'vitest';
import { type AddressRange, readAddressRanges, whereabouts } from './outgoing-addresses.js';

const ranges = (text: string) => readAddressRanges(text) as AddressRange[];

describe('where an address leads', () => {
  it.each(['8.8.8.8', '1.1.1.1', '93.184.216.34', '2001:4860:4860::8888', '2a00:1450:4001::1'])(
    'is the open internet for %s',
    (address) => {
      expect(whereabouts(address, [])).toBe('internet');
    },
  );

  /** The registers of special purpose addresses of IANA (RFC 6890 and what was added since) [M]. */
  it.each([
    ['this network', '0.0.0.0'],
    ['this network', '0.1.2.3'],
    ['private', '10.0.0.1'],
    ['shared with the provider', '100.64.0.1'],
    ['shared with the provider', '100.127.255.254'],
    ['loopback', '127.0.0.1'],
    ['loopback', '127.255.255.254'],
    ['link-local, where clouds tell their secrets', '169.254.169.254'],
    ['private', '172.16.0.1'],
    ['private', '172.31.255.255'],
    ['protocol assignments', '192.0.0.8'],
    ['documentation', '192.0.2.1'],
    ['relays of 6to4', '192.88.99.1'],
    ['private', '192.168.255.255'],
    ['benchmarks', '198.18.0.1'],
    ['benchmarks', '198.19.255.255'],
    ['documentation', '198.51.100.7'],
    ['documentation', '203.0.113.9'],
    ['multicast', '224.0.0.1'],
    ['multicast', '239.255.255.250'],
    ['reserved', '240.0.0.1'],
    ['broadcast', '255.255.255.255'],
    ['unspecified', '::'],
    ['loopback', '::1'],
    ['IPv4-mapped', '::ffff:127.0.0.1'],
    ['IPv4-mapped', '::ffff:a00:1'],
    ['IPv4-compatible', '::127.0.0.1'],
    ['IPv4-translated', '::ffff:0:127.0.0.1'],
    ['NAT64', '64:ff9b::7f00:1'],
    ['NAT64 of a network', '64:ff9b:1::a00:1'],
    ['discard', '100::1'],
    ['Teredo', '2001::7f00:1'],
    ['documentation', '2001:db8::1'],
    ['documentation', '3fff::1'],
    ['6to4', '2002:7f00:1::1'],
    ['not given out', '4000::1'],
    ['segment routing', '5f00::1'],
    ['unique local', 'fc00::1'],
    ['unique local, where clouds tell their secrets', 'fd00:ec2::254'],
    ['link-local', 'fe80::1'],
    ['link-local with a zone', 'fe80::1%eth0'],
    ['site-local', 'fec0::1'],
    ['multicast', 'ff02::1'],
    ['no address', 'localhost'],
    ['no address', ''],
  ])('is refused where it is %s: %s', (_, address) => {
    expect(whereabouts(address, [])).toBe('refused');
  });

  it('is allowed within the ranges that are named, however the address is written', () => {
    const allowed = ranges('127.0.0.0/8, 192.168.7.20, fd12:3456::/32');
    for (const address of ['127.0.0.1', '::ffff:127.9.9.9', '192.168.7.20', 'fd12:3456:1::9'])
      expect(whereabouts(address, allowed), address).toBe('allowed here');
    for (const address of ['192.168.7.21', '10.0.0.1', '::1', 'fd12:3457::1', '::127.0.0.1'])
      expect(whereabouts(address, allowed), address).toBe('refused');
    expect(whereabouts('8.8.8.8', allowed)).toBe('internet');
  });
});

describe('ranges of addresses', () => {
  it('are addresses, with or without how many bits count', () => {
    expect(ranges('10.0.0.0/8,::1').map(([address, bits]) => [address.toString(), bits])).toEqual([
      ['10.0.0.0', 8],
      ['::1', 128],
    ]);
  });

  it.each([
    '',
    ' ',
    '10.0.0.0/33',
    '10.0.0.0/',
    '10.0.0/8',
    'nas.local',
    '10.0.0.1,',
    '::1/129',
    '10.0.0.0/8/8',
    'fe80::1%eth0',
    '0x7f.1',
    '2130706433',
  ])('are not %j, which is said with what is expected', (text) => {
    expect(readAddressRanges(text)).toMatch(/where an address or a range is expected, such as 192/);
  });
});

import { isIP } from 'node:net';
import ipaddr from 'ipaddr.js';

/** An address and how many of its first bits count. */
export type AddressRange = readonly [address: ipaddr.IPv4 | ipaddr.IPv6, bits: number];

/** What is routed on the open internet so far (RFC 4291, 2.4 [M]; the register of IANA): all else may lead anywhere. */
const globalUnicast = ipaddr.IPv6.parseCIDR('2000::/3');

/**
 * Reads a list of addresses and ranges, separated by commas.
 * @returns the ranges, or what is wrong, in words that follow the name of the setting
 */
export function readAddressRanges(text: string): AddressRange[] | string {
  const ranges: AddressRange[] = [];
  for (const item of text.split(',').map((each) => each.trim())) {
    const [address = '', bits, ...more] = item.split('/');
    const version = isIP(address);
    const most = version === 4 ? 32 : 128;
    const isWhole = bits === undefined || (/^\d{1,3}$/.test(bits) && Number(bits) <= most);
    if (version === 0 || address.includes('%') || !isWhole || more.length > 0) {
      return `has "${item}" where an address or a range is expected, such as 192.168.1.20 or 10.0.0.0/8`;
    }
    ranges.push([ipaddr.parse(address), Number(bits ?? most)]);
  }
  return ranges;
}

/** Where an address leads to, as far as that decides whether the service calls it. */
export type Whereabouts = 'internet' | 'allowed here' | 'refused';

/**
 * Where an address leads to. An IPv4 address within an IPv6 one is judged as itself.
 * @param address as a look-up gives it
 * @param allowed what may be called although it is not on the open internet
 */
export function whereabouts(address: string, allowed: readonly AddressRange[]): Whereabouts {
  const read = readAddress(address);
  if (read === undefined) return 'refused';
  if (allowed.some((range) => isWithin(read, range))) return 'allowed here';
  if (read.range() !== 'unicast') return 'refused';
  return read instanceof ipaddr.IPv4 || read.match(globalUnicast) ? 'internet' : 'refused';
}

/** Undefined for what is no address, and for one with a zone, which is of one link only. */
function readAddress(address: string): ipaddr.IPv4 | ipaddr.IPv6 | undefined {
  const version = isIP(address);
  if (version === 4) return ipaddr.IPv4.parse(address);
  // Written in one way first: the reader takes `::127.0.0.1`, which is none, for the IPv4 address at its end.
  if (version === 0 || !URL.canParse(`http://[${address}]`)) return undefined;
  return ipaddr.process(new URL(`http://[${address}]`).hostname.slice(1, -1));
}

function isWithin(address: ipaddr.IPv4 | ipaddr.IPv6, [start, bits]: AddressRange): boolean {
  return address.kind() === start.kind() && address.match(start as ipaddr.IPv4 & ipaddr.IPv6, bits);
}

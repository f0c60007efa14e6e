import { isIP } from 'node:net';

/** A host name with all names below it, an address, or a range of addresses such as 10.0.0.0/8. */
export type Subtree = string;

/** Tags of ASN.1: SEQUENCE; within it the permitted subtrees; of GeneralName a host name and an address. */
const tags = { sequence: 0x30, permitted: 0xa0, dnsName: 0x82, ipAddress: 0x87 };

/** One element of DER: tag, length, content. */
function element(tag: number, content: Buffer): Buffer {
  const { length } = content;
  const long = length < 0x100 ? [0x81, length] : [0x82, length >> 8, length & 0xff];
  return Buffer.concat([Buffer.from([tag, ...(length < 0x80 ? [length] : long)]), content]);
}

/** The 4 or 16 bytes of an IP address. */
export function addressBytes(address: string): Buffer {
  if (isIP(address) === 4) return Buffer.from(address.split('.').map(Number));
  // The URL parser writes an address with dotted digits at its end in groups alone.
  const groups = new URL(`http://[${address}]`).hostname.slice(1, -1).split('::');
  const [head = [], tail = []] = groups.map((half) => (half === '' ? [] : half.split(':')));
  const zeros = Array.from({ length: 8 - head.length - tail.length }, () => '0');
  const bytes = Buffer.alloc(16);
  for (const [index, group] of [...head, ...zeros, ...tail].entries()) {
    bytes.writeUInt16BE(Number.parseInt(group, 16), index * 2);
  }
  return bytes;
}

function maskOf(byteCount: number, prefix: number): Buffer {
  return Buffer.from(
    Array.from({ length: byteCount }, (_, index) => {
      const bits = Math.min(8, Math.max(0, prefix - index * 8));
      return (0xff << (8 - bits)) & 0xff;
    }),
  );
}

function encodedSubtree(subtree: Subtree): Buffer {
  const [host = '', prefixText] = subtree.split('/');
  if (isIP(host) === 0) {
    return element(tags.sequence, element(tags.dnsName, Buffer.from(host, 'ascii')));
  }
  const bytes = addressBytes(host);
  const mask = maskOf(bytes.length, prefixText === undefined ? bytes.length * 8 : Number(prefixText));
  const network = bytes.map((byte, index) => byte & (mask[index] ?? 0));
  return element(tags.sequence, element(tags.ipAddress, Buffer.concat([network, mask])));
}

/**
 * The value of a Name Constraints extension that permits only what is named: an authority with it can vouch for nothing
 * else, whoever gets hold of its key. RFC 5280, 4.2.1.10 [M].
 */
export function encodeNameConstraints(permitted: readonly Subtree[]): Buffer {
  const subtrees = Buffer.concat(permitted.map(encodedSubtree));
  return element(tags.sequence, element(tags.permitted, subtrees));
}

/** Whether a value of `encodeNameConstraints` permits a host name or an address. */
export function permitsName(constraints: Buffer, name: string): boolean {
  if (isIP(name) === 0) {
    const labels = name.toLowerCase().split('.');
    return labels.some((_, index) => constraints.includes(encodedSubtree(labels.slice(index).join('.'))));
  }
  const prefixes = Array.from({ length: addressBytes(name).length * 8 + 1 }, (_, prefix) => prefix);
  return prefixes.some((prefix) => constraints.includes(encodedSubtree(`${name}/${prefix}`)));
}

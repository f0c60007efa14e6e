/**
 * What of an address stands for whom it belongs to: an IPv4 address is one's own, of IPv6 everybody is given a network of
 * 64 bits at least (RFC 6177 [M]) and may change the rest at will.
 *
 * @param address as a socket tells it; `::ffff:192.0.2.7` is the IPv4 address 192.0.2.7
 * @returns the IPv4 address, the first four groups of the IPv6 address, or what was given when it is neither
 */
export function addressNetwork(address: string): string {
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address)?.[1];
  if (mapped !== undefined) return mapped;
  if (!address.includes(':')) return address;
  const [bare = ''] = address.toLowerCase().split('%');
  const [before = '', after] = bare.split('::');
  const leading = groupsOf(before);
  const left = after === undefined ? 0 : Math.max(0, 8 - leading.length - groupsOf(after).length);
  const groups = [...leading, ...Array.from({ length: left }, () => '0'), ...groupsOf(after ?? '')];
  return groups
    .slice(0, 4)
    .map((group) => group.replace(/^0+(?=.)/, ''))
    .join(':');
}

/** The groups of 16 bits; an IPv4 address at the end counts for two. */
function groupsOf(part: string): string[] {
  if (part === '') return [];
  return part.split(':').flatMap((group) => (group.includes('.') ? ['v4', 'v4'] : [group]));
}

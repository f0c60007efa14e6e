export interface ContactLink {
  kind: 'mail' | 'call';
  /** For the device's own programs; it is no address of the service. */
  address: string;
}

/** How somebody is written to or called, as they told the studio in their own words; undefined: that is told nowhere. */
export function contactLink(contact: string): ContactLink | undefined {
  const [, name, host] = /([^\s<>,;:"()@]+)@([\p{L}\d-]+(?:\.[\p{L}\d-]+)+)/u.exec(contact) ?? [];
  if (name !== undefined && host !== undefined) {
    return { kind: 'mail', address: `mailto:${encodeURIComponent(name)}@${encodeURIComponent(host)}` };
  }
  const [number] = /\+?\d[\d\s()/.-]{4,}\d/.exec(contact) ?? [];
  if (number !== undefined) return { kind: 'call', address: `tel:${number.replace(/[^+\d]/g, '')}` };
  return undefined;
}

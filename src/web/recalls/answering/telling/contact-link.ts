export interface ContactLink {
  kind: 'mail' | 'call';
  /** For the device's own programs; it is no address of the service. */
  address: string;
}

/** Digits of an international number, E.164 [M], and its plus. */
const longestNumber = 16;

/** How somebody is written to or called, as they told the studio in their own words; undefined: that is told nowhere. */
export function contactLink(contact: string): ContactLink | undefined {
  const [, name, host] = /([^\s<>,;:"()@]+)@([\p{L}\d-]+(?:\.[\p{L}\d-]+)+)/u.exec(contact) ?? [];
  if (name !== undefined && host !== undefined) {
    return { kind: 'mail', address: `mailto:${encodeURIComponent(name)}@${encodeURIComponent(host)}` };
  }
  // A wrong number would tell a stranger: where there are several, or it may be a date, the reader dials by hand.
  const numbers = [...contact.replace(/(\+\d{1,3}\s*)\(0\)/g, '$1').matchAll(/\+?\d[\d\s().-]{4,}\d/g)].map(
    ([number]) => number,
  );
  const [number] = numbers;
  if (number === undefined || numbers.length > 1 || contact.includes('/')) return undefined;
  if (/^\d{1,4}[.-]\d{1,2}[.-]\d{1,4}$/.test(number.trim())) return undefined;
  const digits = number.replace(/[^+\d]/g, '');
  return digits.length > longestNumber ? undefined : { kind: 'call', address: `tel:${digits}` };
}

/** The time zone of this device, an IANA name. */
export function ownTimeZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** All time zones the browser knows, and its own. */
export function timeZones(): string[] {
  return [...new Set([...Intl.supportedValuesOf('timeZone'), ownTimeZone(), 'UTC'])].sort();
}

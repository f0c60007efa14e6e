import { describe, expect, it } from 'vitest';
import { localDay } from './local-day.js';

describe('the local day', () => {
  it('is already the next day east of Greenwich while it is still evening in UTC', () => {
    expect(localDay('2026-05-31T22:30:00Z', 'Europe/Berlin')).toBe('2026-06-01');
    expect(localDay('2026-05-31T22:30:00Z', 'UTC')).toBe('2026-05-31');
  });

  it('is still the day before west of Greenwich', () => {
    expect(localDay('2026-06-01T03:59:59Z', 'America/New_York')).toBe('2026-05-31');
    expect(localDay('2026-06-01T04:00:00Z', 'America/New_York')).toBe('2026-06-01');
  });

  it('follows the clock change on the days it happens', () => {
    // Berlin: 29 March 2026 has 23 hours, 25 October 2026 has 25.
    expect(localDay('2026-03-28T22:59:59Z', 'Europe/Berlin')).toBe('2026-03-28');
    expect(localDay('2026-03-29T21:59:59Z', 'Europe/Berlin')).toBe('2026-03-29');
    expect(localDay('2026-03-29T22:00:00Z', 'Europe/Berlin')).toBe('2026-03-30');
    expect(localDay('2026-10-25T22:59:59Z', 'Europe/Berlin')).toBe('2026-10-25');
    expect(localDay('2026-10-25T23:00:00Z', 'Europe/Berlin')).toBe('2026-10-26');
  });

  it('takes an instant written with an offset', () => {
    expect(localDay('2026-06-01T00:30:00+02:00', 'UTC')).toBe('2026-05-31');
  });

  it('refuses a time without a zone, which names no instant', () => {
    expect(() => localDay('2026-06-01T00:30:00', 'UTC')).toThrow(RangeError);
  });

  it('refuses a time zone nobody keeps', () => {
    expect(() => localDay('2026-06-01T00:30:00Z', 'Mars/Olympus')).toThrow(RangeError);
  });
});

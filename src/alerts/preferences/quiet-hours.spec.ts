import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { endOfQuietHours } from './quiet-hours.js';

const night = { from: '22:00', until: '07:00' };
const vienna = 'Europe/Vienna';

describe('endOfQuietHours', () => {
  it('is not quiet before the quiet hours, nor at the minute they end', () => {
    expect(endOfQuietHours('2026-01-15T20:59:59Z', night, vienna)).toBeNull();
    expect(endOfQuietHours('2026-01-16T06:00:00Z', night, vienna)).toBeNull();
  });

  it('ends the next morning what begins before midnight, and the same morning what is after it', () => {
    expect(endOfQuietHours('2026-01-15T21:00:00Z', night, vienna)).toBe('2026-01-16T06:00:00.000Z');
    expect(endOfQuietHours('2026-01-16T05:59:59Z', night, vienna)).toBe('2026-01-16T06:00:00.000Z');
  });

  it('may lie within a day', () => {
    const lunch = { from: '12:00', until: '13:30' };
    expect(endOfQuietHours('2026-01-15T11:15:00Z', lunch, vienna)).toBe('2026-01-15T12:30:00.000Z');
    expect(endOfQuietHours('2026-01-15T10:59:00Z', lunch, vienna)).toBeNull();
  });

  it('ends at the same local time when the clocks change overnight', () => {
    // 2026-03-29 is an hour shorter in Vienna, 2026-10-25 an hour longer.
    expect(endOfQuietHours('2026-03-28T22:00:00Z', night, vienna)).toBe('2026-03-29T05:00:00.000Z');
    expect(endOfQuietHours('2026-10-24T21:00:00Z', night, vienna)).toBe('2026-10-25T06:00:00.000Z');
  });

  it('ends as much later as the clocks skip when they skip its end', () => {
    // 02:00 is followed by 03:00, so 02:30 comes at 03:30.
    const early = { from: '22:00', until: '02:30' };
    expect(endOfQuietHours('2026-03-28T23:00:00Z', early, vienna)).toBe('2026-03-29T01:30:00.000Z');
    expect(endOfQuietHours('2026-03-29T01:30:00Z', early, vienna)).toBeNull();
    // Lord Howe Island skips half an hour: 02:15 comes at 02:45.
    const lordHowe = { from: '22:00', until: '02:15' };
    expect(endOfQuietHours('2026-10-03T14:00:00Z', lordHowe, 'Australia/Lord_Howe')).toBe(
      '2026-10-03T15:45:00.000Z',
    );
  });

  it('ends at the first of two equal times, and is not quiet when the hour comes again', () => {
    // 2026-10-25 has 02:30 twice in Vienna, at 00:30 and at 01:30 in UTC.
    const early = { from: '22:00', until: '02:30' };
    expect(endOfQuietHours('2026-10-25T00:29:00Z', early, vienna)).toBe('2026-10-25T00:30:00.000Z');
    expect(endOfQuietHours('2026-10-25T01:10:00Z', early, vienna)).toBeNull();
  });

  it('is never quiet where the clocks skip its beginning past its end', () => {
    const skipped = { from: '02:30', until: '03:10' };
    for (const at of ['2026-03-29T00:59:00Z', '2026-03-29T01:05:00Z', '2026-03-29T01:30:00Z'])
      expect(endOfQuietHours(at, skipped, vienna)).toBeNull();
  });

  it('follows a zone across the date line, where a local day is missing', () => {
    // Samoa went from 2011-12-29 to 2011-12-31.
    const end = endOfQuietHours('2011-12-30T09:00:00Z', night, 'Pacific/Apia');
    expect(end).toBe('2011-12-30T17:00:00.000Z');
  });

  it('lies ahead, within a day, at the time on the wall, and is not quiet itself', () => {
    const zone = fc.constantFrom(vienna, 'America/New_York', 'Australia/Lord_Howe', 'Asia/Kathmandu', 'UTC');
    const time = fc.integer({ min: 0, max: 1_439 });
    const written = (minutes: number) =>
      `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
    const start = fc.date({ min: new Date('2020-01-01'), max: new Date('2035-01-01'), noInvalidDate: true });
    fc.assert(
      fc.property(start, time, time, zone, (date, one, other, timeZone) => {
        fc.pre(one !== other);
        const [from, until] = [written(one), written(other)];
        const at = date.toISOString();
        const end = endOfQuietHours(at, { from, until }, timeZone);
        const wall = (instant: string) => Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone);
        const now = wall(at).toPlainTime().toString({ smallestUnit: 'minute' });
        if (end === null) {
          // Only a change of clocks keeps an hour from being quiet that the wall clock says is.
          const saysQuiet = from < until ? now >= from && now < until : now >= from || now < until;
          if (saysQuiet) expect(changesWithinADay(at, timeZone)).toBe(true);
          return;
        }
        const hours = Temporal.Instant.from(at).until(Temporal.Instant.from(end)).total('hours');
        expect(hours).toBeGreaterThan(0);
        expect(hours).toBeLessThanOrEqual(25);
        expect(endOfQuietHours(end, { from, until }, timeZone)).toBeNull();
        const shown = wall(end).toPlainTime().toString({ smallestUnit: 'minute' });
        if (shown !== until) expect(changesWithinADay(end, timeZone)).toBe(true);
      }),
    );
  });
});

function changesWithinADay(at: string, timeZone: string): boolean {
  const offset = (hours: number) =>
    Temporal.Instant.from(at).add({ hours }).toZonedDateTimeISO(timeZone).offsetNanoseconds;
  return offset(-25) !== offset(0) || offset(0) !== offset(25);
}

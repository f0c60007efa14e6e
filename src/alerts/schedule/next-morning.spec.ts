import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { nextMorning } from './next-morning.js';

describe('nextMorning', () => {
  it('is today while the morning is still to come', () => {
    expect(nextMorning('2026-01-15T05:59:59Z', '07:00', 'Europe/Vienna')).toBe('2026-01-15T06:00:00Z');
  });

  it('is tomorrow at the very minute of the morning and after it', () => {
    expect(nextMorning('2026-01-15T06:00:00Z', '07:00', 'Europe/Vienna')).toBe('2026-01-16T06:00:00Z');
    expect(nextMorning('2026-01-15T20:00:00Z', '07:00', 'Europe/Vienna')).toBe('2026-01-16T06:00:00Z');
  });

  it('stays at the same local time when the clocks change overnight', () => {
    expect(nextMorning('2026-03-28T06:00:00Z', '07:00', 'Europe/Vienna')).toBe('2026-03-29T05:00:00Z');
    expect(nextMorning('2026-10-24T05:00:00Z', '07:00', 'Europe/Vienna')).toBe('2026-10-25T06:00:00Z');
  });

  it('comes as much later as the clocks skip when they skip its time', () => {
    // 2026-03-29 has no 02:30 in Vienna: 02:00 is followed by 03:00.
    expect(nextMorning('2026-03-28T12:00:00Z', '02:30', 'Europe/Vienna')).toBe('2026-03-29T01:30:00Z');
    expect(nextMorning('2026-03-29T01:30:00Z', '02:30', 'Europe/Vienna')).toBe('2026-03-30T00:30:00Z');
  });

  it('comes once when the clocks show its time twice, and the first time counts', () => {
    // 2026-10-25 has 02:30 twice in Vienna.
    expect(nextMorning('2026-10-24T12:00:00Z', '02:30', 'Europe/Vienna')).toBe('2026-10-25T00:30:00Z');
    expect(nextMorning('2026-10-25T00:30:00Z', '02:30', 'Europe/Vienna')).toBe('2026-10-26T01:30:00Z');
  });

  it('follows a change of clocks of half an hour', () => {
    // Lord Howe Island turns its clocks by 30 minutes: 2026-10-04 has no 02:15.
    expect(nextMorning('2026-10-03T12:00:00Z', '02:15', 'Australia/Lord_Howe')).toBe('2026-10-03T15:45:00Z');
  });

  it('takes the local day, not the day in UTC', () => {
    expect(nextMorning('2026-01-15T18:00:00Z', '07:00', 'Pacific/Auckland')).toBe('2026-01-16T18:00:00Z');
    expect(nextMorning('2026-01-15T17:59:00Z', '07:00', 'Pacific/Auckland')).toBe('2026-01-15T18:00:00Z');
  });

  it('lies ahead, within two days, and is once on each local day', () => {
    const zone = fc.constantFrom(
      'Europe/Vienna',
      'America/New_York',
      'Australia/Lord_Howe',
      'Asia/Kathmandu',
      'UTC',
    );
    const time = fc
      .tuple(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 0, max: 59 }))
      .map((parts) => parts.map((part) => String(part).padStart(2, '0')).join(':'));
    const start = fc.date({ min: new Date('2020-01-01'), max: new Date('2035-01-01'), noInvalidDate: true });
    fc.assert(
      fc.property(start, time, zone, (date, morning, timeZone) => {
        const after = date.toISOString();
        const first = nextMorning(after, morning, timeZone);
        const second = nextMorning(first, morning, timeZone);
        const hours = (from: string, to: string) => Temporal.Instant.from(from).until(to).total('hours');
        expect(hours(after, first)).toBeGreaterThan(0);
        expect(hours(after, first)).toBeLessThanOrEqual(26);
        const day = (instant: string) =>
          Temporal.Instant.from(instant).toZonedDateTimeISO(timeZone).toPlainDate();
        expect(day(first).until(day(second)).days).toBe(1);
      }),
    );
  });
});

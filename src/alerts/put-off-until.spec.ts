import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { putOffUntil } from './put-off-until.js';

const vienna = 'Europe/Vienna';
const now = '2026-01-15T12:00:00Z';

describe('putOffUntil', () => {
  it('is the morning of that day by the clocks of the studio', () => {
    expect(putOffUntil('2026-01-16', now, '07:00', vienna)).toEqual({ until: '2026-01-16T06:00:00.000Z' });
    expect(putOffUntil('2026-07-01', now, '07:00', vienna)).toEqual({ until: '2026-07-01T05:00:00.000Z' });
    expect(putOffUntil('2026-01-16', now, '07:00', 'Pacific/Auckland')).toEqual({
      until: '2026-01-15T18:00:00.000Z',
    });
  });

  it('is today while its morning is still to come, and refused once it is over', () => {
    expect(putOffUntil('2026-01-15', '2026-01-15T05:59:00Z', '07:00', vienna)).toEqual({
      until: '2026-01-15T06:00:00.000Z',
    });
    expect(putOffUntil('2026-01-15', '2026-01-15T06:00:00Z', '07:00', vienna)).toEqual({
      fault: 'The morning of 2026-01-15 is over; it is 2026-01-15 now. Choose a later day',
    });
    expect(putOffUntil('2025-12-31', now, '07:00', vienna)).toHaveProperty('fault');
  });

  it('lies at most a year ahead, also from a day that next year does not have', () => {
    expect(putOffUntil('2027-01-15', now, '07:00', vienna)).toHaveProperty('until');
    expect(putOffUntil('2027-01-16', now, '07:00', vienna)).toEqual({
      fault: '2027-01-16 is more than a year ahead; 2027-01-15 is the last day to put it off until',
    });
    expect(putOffUntil('2029-02-28', '2028-02-29T12:00:00Z', '07:00', vienna)).toHaveProperty('until');
    expect(putOffUntil('2029-03-01', '2028-02-29T12:00:00Z', '07:00', vienna)).toHaveProperty('fault');
  });

  it('comes later where the clocks skip the morning', () => {
    expect(putOffUntil('2026-03-29', now, '02:30', vienna)).toEqual({ until: '2026-03-29T01:30:00.000Z' });
  });

  it('lies ahead and on its day, whatever the day', () => {
    const zone = fc.constantFrom(vienna, 'America/New_York', 'Australia/Lord_Howe', 'Pacific/Auckland');
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 800 }), zone, (days, timeZone) => {
        const day = Temporal.Instant.from(now).toZonedDateTimeISO(timeZone).toPlainDate().add({ days });
        const answer = putOffUntil(day.toString(), now, '07:00', timeZone);
        expect('fault' in answer).toBe(days < 0 || days > 365 || (days === 0 && 'fault' in answer));
        if ('fault' in answer) return;
        const until = Temporal.Instant.from(answer.until);
        expect(Temporal.Instant.compare(until, Temporal.Instant.from(now))).toBe(1);
        expect(until.toZonedDateTimeISO(timeZone).toPlainDate().toString()).toBe(day.toString());
      }),
    );
  });
});

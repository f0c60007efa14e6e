import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { nextSummary, summaryDue } from './summary-due.js';

const since = '2026-01-01T00:00:00Z';
const seven = { at: '07:00', since, lastDay: null };
const vienna = 'Europe/Vienna';

describe('when a summary is written', () => {
  it('is written from its time on, and on no earlier one', () => {
    expect(summaryDue('2026-06-15T04:59:59.999Z', seven, vienna)).toBeNull();
    expect(summaryDue('2026-06-15T05:00:00Z', seven, vienna)).toBe('2026-06-15');
  });

  it('is made up for until the end of the local day, and not on the next morning before its time', () => {
    expect(summaryDue('2026-06-15T21:59:59Z', seven, vienna)).toBe('2026-06-15');
    expect(summaryDue('2026-06-15T22:00:00Z', seven, vienna)).toBeNull();
  });

  it('is written once a day, also when the clock was put back', () => {
    const written = { ...seven, lastDay: '2026-06-15' };
    expect(summaryDue('2026-06-15T09:00:00Z', written, vienna)).toBeNull();
    expect(summaryDue('2026-06-14T09:00:00Z', written, vienna)).toBeNull();
    expect(summaryDue('2026-06-16T05:00:00Z', written, vienna)).toBe('2026-06-16');
  });

  it('begins on the next day when it is wished for after its time', () => {
    const wished = { ...seven, since: '2026-06-15T06:00:00Z' };
    expect(summaryDue('2026-06-15T06:00:30Z', wished, vienna)).toBeNull();
    expect(summaryDue('2026-06-16T05:00:00Z', wished, vienna)).toBe('2026-06-16');
  });

  it('comes as much later as the clocks skip, and at the first of two equal times', () => {
    // Vienna skips from 02:00 to 03:00 on 29 March 2026, and shows 02:30 twice on 25 October.
    const atNight = { ...seven, at: '02:30' };
    expect(summaryDue('2026-03-29T01:29:59Z', atNight, vienna)).toBeNull();
    expect(summaryDue('2026-03-29T01:30:00Z', atNight, vienna)).toBe('2026-03-29');
    expect(summaryDue('2026-10-25T00:29:59Z', atNight, vienna)).toBeNull();
    expect(summaryDue('2026-10-25T00:30:00Z', atNight, vienna)).toBe('2026-10-25');
    expect(summaryDue('2026-10-25T01:30:00Z', { ...atNight, lastDay: '2026-10-25' }, vienna)).toBeNull();
  });

  it('knows when the next one comes', () => {
    expect(nextSummary('2026-06-15T04:00:00Z', seven, vienna)).toBe('2026-06-15T05:00:00Z');
    expect(nextSummary('2026-06-15T08:00:00Z', seven, vienna)).toBe('2026-06-15T08:00:00Z');
    const written = { ...seven, lastDay: '2026-06-15' };
    expect(nextSummary('2026-06-15T08:00:00Z', written, vienna)).toBe('2026-06-16T05:00:00Z');
  });

  it('is written on every local day exactly once, whenever it is looked', () => {
    const zones = fc.constantFrom(vienna, 'America/St_Johns', 'Australia/Lord_Howe', 'Africa/Cairo', 'UTC');
    const times = fc.tuple(fc.integer({ min: 0, max: 21 }), fc.constantFrom('00', '30'));
    const start = Temporal.Instant.from('2026-01-01T12:00:00Z');
    const looks = fc.array(fc.integer({ min: 1, max: 180 }), { minLength: 100, maxLength: 100 });
    fc.assert(
      fc.property(zones, times, looks, (zone, [hour, minute], waits) => {
        const wish = {
          at: `${String(hour).padStart(2, '0')}:${minute}`,
          since,
          lastDay: null as string | null,
        };
        const days: string[] = [];
        let now = start;
        for (const wait of waits) {
          now = now.add({ minutes: wait });
          const day = summaryDue(now.toString(), wish, zone);
          if (day === null) continue;
          days.push(day);
          wish.lastDay = day;
        }
        const first = Temporal.PlainDate.from(days[0] ?? '2026-01-01');
        expect(days).toEqual(days.map((_, index) => first.add({ days: index }).toString()));
        const hours = start.until(now, { largestUnit: 'hours' }).hours;
        expect(days.length).toBeGreaterThanOrEqual(Math.floor(hours / 25) - 1);
      }),
      { numRuns: 10 },
    );
  });
});

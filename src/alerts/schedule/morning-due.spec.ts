import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { isMorningDue } from './morning-due.js';

const zone = 'Europe/Vienna';

describe('what is done once a morning', () => {
  it.each([
    ['it was never done', null, '2026-11-26T03:00:00Z', true],
    ['the morning has come since', '2026-11-25T06:00:10Z', '2026-11-26T06:00:00Z', true],
    ['the morning is yet to come', '2026-11-25T06:00:10Z', '2026-11-26T05:59:59Z', false],
    ['it was done this morning', '2026-11-26T06:00:10Z', '2026-11-26T20:00:00Z', false],
    ['several mornings were missed', '2026-11-20T06:00:10Z', '2026-11-26T12:00:00Z', true],
    [
      'the clock was set back by a minute over the morning',
      '2026-11-26T06:00:10Z',
      '2026-11-26T05:59:30Z',
      false,
    ],
    ['the clock was set back by a day', '2026-11-27T06:00:10Z', '2026-11-26T06:00:11Z', false],
    ['the clock had been ahead by a year', '2027-11-26T06:00:10Z', '2026-11-26T06:00:11Z', true],
  ])('is due or not when %s', (_, doneAt, now, expected) => {
    expect(isMorningDue(doneAt, now, '07:00', zone)).toBe(expected);
  });

  const zones = fc.constantFrom(
    'Europe/Vienna',
    'America/New_York',
    'Australia/Lord_Howe',
    'Pacific/Apia',
    'UTC',
  );
  const mornings = fc.constantFrom('00:00', '02:30', '07:00', '23:45');
  const start = fc.date({ min: new Date('2026-01-01'), max: new Date('2027-12-31'), noInvalidDate: true });

  it('is done exactly once each local day when it is looked at every so often, whatever the zone does', () => {
    fc.assert(
      fc.property(
        zones,
        mornings,
        start,
        fc.integer({ min: 1, max: 50 }),
        (timeZone, morning, from, minutes) => {
          let now = Temporal.Instant.from(from.toISOString());
          let doneAt = now.toString();
          const days: string[] = [];
          for (let look = 0; look < (5 * 24 * 60) / minutes; look += 1) {
            now = now.add({ minutes });
            if (!isMorningDue(doneAt, now.toString(), morning, timeZone)) continue;
            doneAt = now.toString();
            // Moved to midnight, the morning's label is the local day it belongs to, also when the look comes after it.
            const local = now.toZonedDateTimeISO(timeZone).toPlainDateTime();
            const time = Temporal.PlainTime.from(morning);
            const isNextDay = Temporal.PlainTime.compare(local.toPlainTime(), time) < 0;
            days.push(
              local
                .toPlainDate()
                .subtract({ days: isNextDay ? 1 : 0 })
                .toString(),
            );
          }
          expect(new Set(days).size).toBe(days.length);
          expect(days.length).toBeGreaterThanOrEqual(4);
          expect(days.length).toBeLessThanOrEqual(6);
        },
      ),
      { numRuns: process.env.SOAK ? 200 : 12 },
    );
  });

  it('is never done twice for one morning by a clock that is set back by up to a day and runs on', () => {
    fc.assert(
      fc.property(
        zones,
        mornings,
        start,
        fc.integer({ min: 1, max: 24 * 60 }),
        (timeZone, morning, from, back) => {
          const doneAt = Temporal.Instant.from(from.toISOString());
          for (const minutes of [0, Math.floor(back / 2), back]) {
            const now = doneAt.subtract({ minutes: back }).add({ minutes });
            expect(isMorningDue(doneAt.toString(), now.toString(), morning, timeZone)).toBe(false);
          }
        },
      ),
    );
  });
});

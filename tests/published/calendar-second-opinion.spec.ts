import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { retentionEnd } from '../../src/clients/retention-end.js';
import { localDay } from '../../src/identity/local-day.js';
import { lastUsableDay } from '../../src/stock/opened-life.js';
import { readUseBy } from '../../src/stock/use-by.js';

// The shelf-life rules reckon with Temporal. Here a second calendar library, written apart from it, has to come
// to the same days. The zones change their clocks by an hour, by half an hour, at midnight, or have odd offsets.
const ZONES = [
  'UTC',
  'Europe/Berlin',
  'Europe/London',
  'America/New_York',
  'America/Sao_Paulo',
  'America/St_Johns',
  'Asia/Kathmandu',
  'Asia/Beirut',
  'Australia/Lord_Howe',
  'Pacific/Chatham',
  'Pacific/Apia',
];
const zone = fc.constantFrom(...ZONES);

const anyInstant = fc
  .date({ min: new Date('2000-01-01'), max: new Date('2060-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString());

/** Every change of clocks of the zones between 2005 and 2035, found by the second library. */
const changes = ZONES.flatMap((name) => changesOfClocks(name));
const instantNearAChange = fc
  .tuple(fc.constantFrom(...changes), fc.integer({ min: -36 * 3600, max: 36 * 3600 }))
  .map(([change, seconds]) => ({
    timeZone: change.timeZone,
    instant: new Date(change.milliseconds + seconds * 1000).toISOString(),
  }));
const zonedInstant = fc.oneof(fc.record({ timeZone: zone, instant: anyInstant }), instantNearAChange);

function changesOfClocks(timeZone: string): { timeZone: string; milliseconds: number }[] {
  const found: { timeZone: string; milliseconds: number }[] = [];
  const hour = 3_600_000;
  const offset = (milliseconds: number) => DateTime.fromMillis(milliseconds, { zone: timeZone }).offset;
  let before = Date.UTC(2005, 0, 1);
  while (before < Date.UTC(2035, 0, 1)) {
    let after = before + 7 * 24 * hour;
    if (offset(before) !== offset(after)) {
      let low = before;
      while (after - low > hour / 4) {
        const middle = low + (after - low) / 2;
        if (offset(middle) === offset(low)) low = middle;
        else after = middle;
      }
      found.push({ timeZone, milliseconds: after });
    }
    before += 7 * 24 * hour;
  }
  return found;
}

function luxonDay(instant: string, timeZone: string): DateTime {
  return DateTime.fromISO(instant, { zone: timeZone });
}

function lastDayOf(openedAt: string, openedLife: string, timeZone: string) {
  return lastUsableDay({
    useByLastDay: null,
    openedAt,
    openedLife,
    assumedOpenedLife: null,
    usableThrough: null,
    timeZone,
  });
}

describe('two calendars agree', () => {
  it('that there were clock changes to test with', () => {
    const zones = new Set(changes.map((change) => change.timeZone));
    expect(zones).toContain('Europe/Berlin');
    expect(zones).toContain('America/Sao_Paulo');
    expect(zones).toContain('Australia/Lord_Howe');
    expect(changes.length).toBeGreaterThan(300);
  });

  it('on the local day of an instant, also around changes of clocks', () => {
    fc.assert(
      fc.property(zonedInstant, ({ instant, timeZone }) => {
        expect(localDay(instant, timeZone)).toBe(luxonDay(instant, timeZone).toISODate());
      }),
      { numRuns: 1000 },
    );
  });

  it('on the end of a month and of a year', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1900, max: 2199 }), fc.integer({ min: 1, max: 12 }), (year, month) => {
        const end = DateTime.utc(year, month, 1).endOf('month').toISODate();
        expect(readUseBy(DateTime.utc(year, month, 1).toFormat('yyyy-MM'))).toHaveProperty('lastDay', end);
        expect(readUseBy(String(year))).toHaveProperty(
          'lastDay',
          DateTime.utc(year, month, 1).endOf('year').toISODate(),
        );
      }),
    );
  });

  it('on which days exist', () => {
    const digits = (most: number) =>
      fc.integer({ min: 0, max: most }).map((number) => String(number).padStart(2, '0'));
    fc.assert(
      fc.property(fc.integer({ min: 1900, max: 2199 }), digits(14), digits(33), (year, month, day) => {
        const text = `${year}-${month}-${day}`;
        expect('error' in readUseBy(text)).toBe(!DateTime.fromISO(text, { zone: 'utc' }).isValid);
      }),
      { numRuns: 1000 },
    );
  });

  it('on months after opening, clamped to the end of a shorter month', () => {
    fc.assert(
      fc.property(zonedInstant, fc.integer({ min: 1, max: 120 }), ({ instant, timeZone }, months) => {
        // Added to the plain day: one zone here once skipped a whole day, which a label does not know.
        const openedOn = luxonDay(instant, timeZone).toISODate() ?? '';
        const expected = DateTime.fromISO(openedOn, { zone: 'utc' }).plus({ months }).toISODate();
        expect(lastDayOf(instant, `P${months}M`, timeZone).lastDay).toBe(expected);
      }),
      { numRuns: 1000 },
    );
  });

  it('on months from the last days of a month', () => {
    const fromTheEnd = fc.record({
      year: fc.integer({ min: 2000, max: 2080 }),
      month: fc.integer({ min: 1, max: 12 }),
      daysBack: fc.integer({ min: 0, max: 3 }),
      months: fc.integer({ min: 1, max: 120 }),
    });
    fc.assert(
      fc.property(fromTheEnd, ({ year, month, daysBack, months }) => {
        const opened = DateTime.utc(year, month, 1, 12).endOf('month').minus({ days: daysBack });
        expect(lastDayOf(opened.toISO() ?? '', `P${months}M`, 'UTC').lastDay).toBe(
          opened.plus({ months }).toISODate(),
        );
      }),
      { numRuns: 1000 },
    );
  });

  it('on days after opening', () => {
    fc.assert(
      fc.property(zonedInstant, fc.integer({ min: 1, max: 3650 }), ({ instant, timeZone }, days) => {
        const openedOn = luxonDay(instant, timeZone).toISODate() ?? '';
        const expected = DateTime.fromISO(openedOn, { zone: 'utc' }).plus({ days }).toISODate();
        expect(lastDayOf(instant, `P${days}D`, timeZone).lastDay).toBe(expected);
      }),
      { numRuns: 1000 },
    );
  });

  it('on hours after opening, which no change of clocks makes longer or shorter', () => {
    fc.assert(
      fc.property(zonedInstant, fc.integer({ min: 1, max: 8760 }), ({ instant, timeZone }, hours) => {
        const end = luxonDay(instant, timeZone).plus({ hours });
        const last = lastDayOf(instant, `PT${hours}H`, timeZone);
        expect(last.lastDay).toBe(end.toISODate());
        expect(Date.parse(last.lastInstant ?? '')).toBe(end.toMillis());
      }),
      { numRuns: 1000 },
    );
  });
});

describe('the end of retention agrees with a second calendar', () => {
  it('on years after the last record, from 29 February too', () => {
    const day = fc.oneof(
      zonedInstant.map(({ instant, timeZone }) => luxonDay(instant, timeZone).toISODate() ?? ''),
      fc.constantFrom('2000-02-29', '2024-02-29', '2096-02-29', '2024-02-28', '2024-12-31'),
    );
    fc.assert(
      fc.property(day, fc.integer({ min: 0, max: 100 }), (lastRecordOn, years) => {
        const last = DateTime.fromISO(lastRecordOn, { zone: 'utc' }).plus({ years });
        expect(retentionEnd(lastRecordOn, years)).toEqual({
          keptThrough: last.toISODate(),
          erasableFrom: last.plus({ days: 1 }).toISODate(),
        });
      }),
      { numRuns: 1000 },
    );
  });
});

import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import {
  type ContainerLifeFacts,
  endOfOpenedLife,
  type LastUsableDay,
  lastUsableDay,
} from './opened-life.js';

function opened(facts: Partial<ContainerLifeFacts> & { timeZone?: string }) {
  return lastUsableDay({
    useByLastDay: null,
    openedAt: '2026-03-01T10:00:00Z',
    openedLife: null,
    assumedOpenedLife: null,
    usableThrough: null,
    timeZone: 'Europe/Berlin',
    ...facts,
  });
}

describe('the last usable day', () => {
  it('of a sealed container is its use-by, whatever its opened life', () => {
    expect(opened({ openedAt: null, useByLastDay: '2027-04-30', openedLife: 'P1D' })).toEqual({
      lastDay: '2027-04-30',
      boundBy: 'use-by',
      lifeFrom: 'none',
      lastInstant: null,
    });
  });

  it('of an opened container is the day of opening plus the opened life', () => {
    expect(opened({ openedLife: 'P6M' })).toEqual({
      lastDay: '2026-09-01',
      boundBy: 'opened life',
      lifeFrom: 'label',
      lastInstant: null,
    });
    expect(opened({ openedLife: 'P30D' }).lastDay).toBe('2026-03-31');
  });

  it('is clamped to the end of a shorter month', () => {
    // Calendar months, clamped [C]: 31 Aug + 6 months = 28 or 29 Feb.
    expect(opened({ openedAt: '2026-08-31T10:00:00Z', openedLife: 'P6M' }).lastDay).toBe('2027-02-28');
    expect(opened({ openedAt: '2027-08-31T10:00:00Z', openedLife: 'P6M' }).lastDay).toBe('2028-02-29');
    expect(opened({ openedAt: '2028-02-29T10:00:00Z', openedLife: 'P12M' }).lastDay).toBe('2029-02-28');
    expect(opened({ openedAt: '2026-01-31T10:00:00Z', openedLife: 'P1M' }).lastDay).toBe('2026-02-28');
  });

  it('counts from the local day of opening, not the day in UTC', () => {
    const openedAt = '2026-05-31T22:30:00Z';
    expect(opened({ openedAt, openedLife: 'P1M' }).lastDay).toBe('2026-07-01');
    expect(opened({ openedAt, openedLife: 'P1M', timeZone: 'America/New_York' }).lastDay).toBe('2026-06-30');
  });

  it('is the use-by when that comes first', () => {
    expect(opened({ openedLife: 'P12M', useByLastDay: '2026-12-31' })).toEqual({
      lastDay: '2026-12-31',
      boundBy: 'use-by',
      lifeFrom: 'label',
      lastInstant: null,
    });
  });

  it('is bound by the opened life when both end on one day', () => {
    expect(opened({ openedLife: 'P1M', useByLastDay: '2026-04-01' }).boundBy).toBe('opened life');
  });

  it('takes the label before the assumption of the studio, even when the assumption is shorter', () => {
    expect(opened({ openedLife: 'P12M', assumedOpenedLife: 'P6M' })).toMatchObject({
      lastDay: '2027-03-01',
      lifeFrom: 'label',
    });
  });

  it('says so when the life is the assumption of the studio', () => {
    expect(opened({ assumedOpenedLife: 'P6M' })).toMatchObject({
      lastDay: '2026-09-01',
      lifeFrom: 'assumed',
    });
  });

  it('invents no opened life where neither label nor studio gives one', () => {
    expect(opened({ useByLastDay: '2027-04-30' })).toEqual({
      lastDay: '2027-04-30',
      boundBy: 'use-by',
      lifeFrom: 'none',
      lastInstant: null,
    });
    expect(opened({})).toEqual({ lastDay: null, boundBy: 'none', lifeFrom: 'none', lastInstant: null });
  });

  it('counts hours exactly across the change of clocks', () => {
    // Berlin goes from +01:00 to +02:00 on 29 March 2026 at 01:00 UTC.
    expect(opened({ openedAt: '2026-03-28T20:00:00Z', openedLife: 'PT24H' })).toEqual({
      lastDay: '2026-03-29',
      boundBy: 'opened life',
      lifeFrom: 'label',
      lastInstant: '2026-03-29T20:00:00Z',
    });
    expect(opened({ openedAt: '2026-03-28T22:30:00Z', openedLife: 'PT24H' }).lastDay).toBe('2026-03-30');
  });

  it('gives no last instant when the use-by ends it before the hours do', () => {
    expect(opened({ openedLife: 'PT48H', useByLastDay: '2026-03-02' })).toMatchObject({
      lastDay: '2026-03-02',
      boundBy: 'use-by',
      lastInstant: null,
    });
    expect(opened({ openedLife: 'PT48H', useByLastDay: '2026-03-03' })).toMatchObject({
      boundBy: 'opened life',
      lastInstant: '2026-03-03T10:00:00Z',
    });
  });

  it('refuses a stored life it cannot read instead of ignoring it', () => {
    expect(() => opened({ openedLife: 'a year' })).toThrow(RangeError);
  });

  it('never lies beyond the use-by, and never before the day of opening unless the use-by does', () => {
    const life = fc.oneof(
      fc.integer({ min: 1, max: 120 }).map((months) => `P${months}M`),
      fc.integer({ min: 1, max: 3650 }).map((days) => `P${days}D`),
      fc.integer({ min: 1, max: 8760 }).map((hours) => `PT${hours}H`),
    );
    const instant = fc
      .date({ min: new Date('2010-01-01'), max: new Date('2090-01-01'), noInvalidDate: true })
      .map((date) => date.toISOString());
    fc.assert(
      fc.property(life, instant, instant, (openedLife, openedAt, useByInstant) => {
        const useByLastDay = useByInstant.slice(0, 10);
        const both = opened({ openedLife, openedAt, useByLastDay, timeZone: 'UTC' });
        const alone = opened({ openedLife, openedAt, timeZone: 'UTC' });
        expect([useByLastDay, alone.lastDay]).toContain(both.lastDay);
        expect((both.lastDay ?? '') <= useByLastDay).toBe(true);
        expect((alone.lastDay ?? '') >= openedAt.slice(0, 10)).toBe(true);
      }),
    );
  });
});

/** The instant, in milliseconds, from which it is not usable any more; never when no date is known. */
function endOf({ lastDay, lastInstant }: LastUsableDay, timeZone: string): number {
  if (lastInstant !== null) return Date.parse(lastInstant);
  if (lastDay === null) return Number.POSITIVE_INFINITY;
  return Temporal.PlainDate.from(lastDay).add({ days: 1 }).toZonedDateTime(timeZone).epochMilliseconds;
}

describe('what came opened from another studio', () => {
  it('lasts no longer than it did there, whatever this studio assumes', () => {
    const came = { assumedOpenedLife: 'P12M', usableThrough: '2026-06-01' };
    expect(opened(came)).toEqual({
      lastDay: '2026-06-01',
      boundBy: 'opened life',
      lifeFrom: 'sending studio',
      lastInstant: null,
    });
    expect(opened({ ...came, assumedOpenedLife: null })).toMatchObject({ lastDay: '2026-06-01' });
  });

  it('lasts less long when this studio or the label says so', () => {
    expect(opened({ assumedOpenedLife: 'P1M', usableThrough: '2026-06-01' })).toMatchObject({
      lastDay: '2026-04-01',
      lifeFrom: 'assumed',
    });
    expect(opened({ useByLastDay: '2026-05-31', usableThrough: '2026-06-01' })).toMatchObject({
      lastDay: '2026-05-31',
      boundBy: 'use-by',
    });
    expect(opened({ openedLife: 'P3M', usableThrough: '2026-06-01' })).toMatchObject({ lifeFrom: 'label' });
  });

  it('ends at the instant of a life in hours, whatever day that is here', () => {
    const usableThrough = '2026-03-02T23:30:00.000Z';
    expect(opened({ assumedOpenedLife: 'P7D', usableThrough })).toMatchObject({
      lastDay: '2026-03-03',
      lastInstant: usableThrough,
    });
    expect(opened({ openedLife: 'PT24H', usableThrough })).toMatchObject({ lifeFrom: 'label' });
    expect(opened({ openedLife: 'PT38H', usableThrough })).toMatchObject({ lastInstant: usableThrough });
  });

  it('is not bound by it once it counts as sealed again', () => {
    expect(opened({ openedAt: null, useByLastDay: '2027-04-30', usableThrough: '2026-06-01' })).toMatchObject(
      {
        lastDay: '2027-04-30',
        boundBy: 'use-by',
      },
    );
  });

  it('is told to the next studio without its use-by, which travels with the lot', () => {
    const timeZone = 'Europe/Berlin';
    const facts = {
      useByLastDay: '2026-03-05',
      openedAt: '2026-03-01T10:00:00Z',
      openedLife: null,
      assumedOpenedLife: 'P6M',
      usableThrough: null,
      timeZone,
    };
    expect(endOfOpenedLife(facts)).toBe('2026-09-01');
    expect(endOfOpenedLife({ ...facts, openedLife: 'PT24H' })).toBe('2026-03-02T10:00:00.000Z');
    expect(endOfOpenedLife({ ...facts, openedAt: null })).toBeNull();
    expect(endOfOpenedLife({ ...facts, assumedOpenedLife: null })).toBeNull();
  });

  it('never lasts longer than before, through however many studios it goes', () => {
    const studio = fc.record({
      timeZone: fc.constantFrom('Europe/Berlin', 'America/New_York', 'Pacific/Auckland', 'UTC'),
      assumedOpenedLife: fc.constantFrom(null, 'P1D', 'P6M', 'P12M', 'PT24H', 'PT30H'),
    });
    const container = fc.record({
      useByLastDay: fc.constantFrom(null, '2026-03-02', '2026-12-31'),
      openedAt: fc.constantFrom(
        '2026-03-01T00:30:00.000Z',
        '2026-03-01T10:00:00.000Z',
        '2026-03-01T23:30:00.000Z',
      ),
      openedLife: fc.constantFrom(null, null, 'P3M', 'PT48H'),
    });
    fc.assert(
      fc.property(container, fc.array(studio, { minLength: 2, maxLength: 5 }), (facts, route) => {
        let usableThrough: string | null = null;
        let before: LastUsableDay | undefined;
        for (const at of route) {
          const here = { ...facts, ...at, usableThrough };
          const now = lastUsableDay(here);
          if (before !== undefined && before.lastDay !== null) {
            const { lastDay, lastInstant } = before;
            if (lastInstant === null) expect(now.lastDay !== null && now.lastDay <= lastDay).toBe(true);
            else expect(endOf(now, at.timeZone)).toBeLessThanOrEqual(Date.parse(lastInstant));
          }
          before = now;
          usableThrough = endOfOpenedLife(here);
        }
      }),
    );
  });
});

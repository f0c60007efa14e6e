import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import type { ContainerLifeFacts } from './opened-life.js';
import { judgeShelfLife } from './shelf-life.js';

const berlin = 'Europe/Berlin';

function judge(facts: Partial<ContainerLifeFacts>, at: string, timeZone = berlin) {
  const known = {
    useByLastDay: null,
    openedAt: null,
    openedLife: null,
    assumedOpenedLife: null,
    usableThrough: null,
    ...facts,
  };
  return judgeShelfLife(known, at, timeZone);
}

describe('shelf life', () => {
  // ISO 15223-1:2021, 5.1.4 [S]: usable through the end of the day shown.
  it('admits a sealed bottle until the last second of its use-by day in the studio', () => {
    const useByLastDay = '2026-05-31';
    expect(judge({ useByLastDay }, '2026-05-31T21:59:59.999Z')).toMatchObject({
      status: 'usable',
      daysLeft: 0,
    });
    expect(judge({ useByLastDay }, '2026-05-31T22:00:00Z')).toMatchObject({
      status: 'expired',
      daysLeft: -1,
    });
  });

  it('judges by the day where the studio is', () => {
    const at = '2026-06-01T03:00:00Z';
    expect(judge({ useByLastDay: '2026-05-31' }, at, 'America/New_York').status).toBe('usable');
    expect(judge({ useByLastDay: '2026-05-31' }, at, 'UTC').status).toBe('expired');
  });

  it('admits through the whole of a day of 23 or 25 hours', () => {
    expect(judge({ useByLastDay: '2026-03-29' }, '2026-03-29T21:59:59Z').status).toBe('usable');
    expect(judge({ useByLastDay: '2026-03-29' }, '2026-03-29T22:00:00Z').status).toBe('expired');
    expect(judge({ useByLastDay: '2026-10-25' }, '2026-10-25T22:59:59Z').status).toBe('usable');
    expect(judge({ useByLastDay: '2026-10-25' }, '2026-10-25T23:00:00Z').status).toBe('expired');
  });

  it('admits through a day that begins at one in the morning', () => {
    // São Paulo skipped the hour from midnight on 4 November 2018.
    const useByLastDay = '2018-11-03';
    expect(judge({ useByLastDay }, '2018-11-04T02:59:59Z', 'America/Sao_Paulo').status).toBe('usable');
    expect(judge({ useByLastDay }, '2018-11-04T03:00:00Z', 'America/Sao_Paulo').status).toBe('expired');
  });

  it('refuses a bottle that would be open too long in the studio it came from, and says whose day that is', () => {
    const facts = { openedAt: '2026-03-01T08:00:00Z', openedLife: 'P12M', usableThrough: '2026-09-01' };
    expect(judge(facts, '2026-09-01T21:59:59Z').status).toBe('usable');
    const late = judge(facts, '2026-09-01T22:00:00Z');
    expect(late).toMatchObject({ status: 'open too long', lastDay: '2026-09-01', daysLeft: -1 });
    expect(late.sentence.seen).toContain('opened life as counted in the studio it came from');
  });

  it('refuses a bottle opened longer ago than its shelf life', () => {
    const facts = { openedAt: '2025-08-31T08:00:00Z', openedLife: 'P6M', useByLastDay: '2027-12-31' };
    expect(judge(facts, '2026-02-28T22:59:59Z')).toMatchObject({ status: 'usable', daysLeft: 0 });
    expect(judge(facts, '2026-02-28T23:00:00Z')).toMatchObject({
      status: 'open too long',
      lastDay: '2026-02-28',
      daysLeft: -1,
      openedLifeFrom: 'label',
    });
  });

  it('refuses an opened bottle past its use-by even inside its opened life', () => {
    const facts = { openedAt: '2026-05-01T08:00:00Z', openedLife: 'P12M', useByLastDay: '2026-05-31' };
    expect(judge(facts, '2026-06-01T08:00:00Z')).toMatchObject({ status: 'expired', lastDay: '2026-05-31' });
  });

  it('names whichever ended first when both have ended', () => {
    const facts = { openedAt: '2026-01-01T08:00:00Z', openedLife: 'P1M', useByLastDay: '2026-03-31' };
    expect(judge(facts, '2026-06-01T08:00:00Z')).toMatchObject({
      status: 'open too long',
      lastDay: '2026-02-01',
    });
  });

  it('lets a product without a use-by be bound by its opened life alone', () => {
    // Regulation (EC) 1223/2009, Art. 19(1)(c) [P], by analogy: above 30 months of minimum durability a period
    // after opening stands in place of a date.
    const facts = { openedAt: '2026-05-01T08:00:00Z', openedLife: 'P12M' };
    expect(judge(facts, '2027-05-01T08:00:00Z')).toMatchObject({ status: 'usable', lastDay: '2027-05-01' });
    expect(judge(facts, '2027-05-02T08:00:00Z').status).toBe('open too long');
  });

  it('ends a life in hours at its instant, not with the day', () => {
    const facts = { openedAt: '2026-05-01T08:00:00Z', openedLife: 'PT48H' };
    expect(judge(facts, '2026-05-03T08:00:00Z')).toMatchObject({
      status: 'usable',
      daysLeft: 0,
      lastInstant: '2026-05-03T08:00:00Z',
    });
    expect(judge(facts, '2026-05-03T08:00:00.001Z')).toMatchObject({ status: 'open too long', daysLeft: 0 });
  });

  it('says when no date is known rather than calling it usable', () => {
    expect(judge({}, '2026-05-01T08:00:00Z')).toMatchObject({
      status: 'no date known',
      lastDay: null,
      daysLeft: null,
    });
    expect(judge({ openedAt: '2020-01-01T08:00:00Z' }, '2026-05-01T08:00:00Z').status).toBe('no date known');
  });

  it('tells whether the opened life is from the label, assumed or unknown', () => {
    const openedAt = '2026-05-01T08:00:00Z';
    const at = '2026-05-02T08:00:00Z';
    expect(judge({ openedAt, openedLife: 'P6M' }, at).openedLifeFrom).toBe('label');
    expect(judge({ openedAt, assumedOpenedLife: 'P6M' }, at).openedLifeFrom).toBe('assumed');
    expect(judge({ openedAt, useByLastDay: '2027-01-31' }, at).openedLifeFrom).toBe('none');
  });
});

describe('the sentence of a shelf life', () => {
  it('says what was seen, what is allowed and what to do', () => {
    const facts = { openedAt: '2025-05-01T08:00:00Z', assumedOpenedLife: 'P6M', useByLastDay: '2027-12-31' };
    expect(judge(facts, '2026-05-01T08:00:00Z').sentence).toEqual({
      seen: 'Opened on 2025-05-01, opened life P6M assumed by the studio, use-by 2027-12-31.',
      allowed: 'Usable through the end of 2025-11-01.',
      next: 'Put it aside and take another.',
    });
  });

  it('gives the local time at which hours end', () => {
    const facts = { openedAt: '2026-05-01T08:15:00Z', openedLife: 'PT24H' };
    expect(judge(facts, '2026-05-01T09:00:00Z').sentence).toEqual({
      seen: 'Opened on 2026-05-01, opened life PT24H from the label, no use-by date recorded.',
      allowed: 'Usable until 2026-05-02 10:15.',
      next: '',
    });
  });

  it('asks for what is missing', () => {
    const at = '2026-05-01T08:00:00Z';
    expect(judge({}, at).sentence).toEqual({
      seen: 'Sealed, no use-by date recorded.',
      allowed: 'No last usable day can be worked out.',
      next: 'Look for a date on the label and record it before use.',
    });
    expect(judge({ openedAt: at, useByLastDay: '2027-01-31' }, at).sentence.next).toBe(
      'Record the opened life from the label.',
    );
    expect(judge({ openedAt: at, assumedOpenedLife: 'P6M' }, at).sentence.next).toContain(
      'Compare with the label',
    );
  });
});

describe('shelf life over time', () => {
  it('never becomes usable again once it has ended', () => {
    const minutes = fc.integer({ min: 0, max: 60 * 24 * 900 });
    const life = fc.constantFrom('P1M', 'P12M', 'P30D', 'PT48H', null);
    const useBy = fc.constantFrom('2026-03-29', '2026-10-25', '2027-02-28', null);
    fc.assert(
      fc.property(minutes, minutes, life, useBy, (first, second, openedLife, useByLastDay) => {
        const openedAt = '2026-01-31T23:30:00Z';
        const minutesOn = (amount: number) =>
          Temporal.Instant.from(openedAt).add({ minutes: amount }).toString();
        const facts = { openedAt, openedLife, useByLastDay };
        const earlier = judge(facts, minutesOn(Math.min(first, second)));
        const later = judge(facts, minutesOn(Math.max(first, second)));
        if (later.status === 'usable') expect(earlier.status).toBe('usable');
        if (earlier.status !== 'usable') expect(later.status).toBe(earlier.status);
      }),
    );
  });
});

import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { planningAssumptions } from '../settings/planning-assumptions.js';
import {
  type ArrivedLot,
  LONGEST_LIFE_DAYS,
  lifeOnArrivalOf,
  MOST_LOTS,
  OFFER_COUNTS_AS_LOTS,
} from './life-on-arrival.js';

const lot = (
  days: number | null,
  supplierId: string | null = 'one',
  arrivedOn = '2026-02-10',
): ArrivedLot => ({
  supplierId,
  arrivedOn,
  useBy:
    days === null ? null : (DateTime.fromISO(arrivedOn, { zone: 'utc' }).plus({ days }).toISODate() ?? ''),
});

describe('how long a product still keeps when it arrives', () => {
  it('is an assumption while nothing came and nothing is said', () => {
    expect(lifeOnArrivalOf([], 'one', null)).toEqual({
      lifeDays: planningAssumptions.lifeOnArrivalDays.value,
      basis: 'assumed',
      lots: 0,
      leftOut: 0,
    });
  });

  it('is what the offer says while nothing came', () => {
    expect(lifeOnArrivalOf([], 'one', 400)).toEqual({ lifeDays: 400, basis: 'offered', lots: 0, leftOut: 0 });
  });

  it('is the mean of what came, and the word of the offer as three lots more, rounded down', () => {
    expect(lifeOnArrivalOf([lot(300), lot(201)], 'one', null)).toMatchObject({
      lifeDays: 250,
      basis: 'learnt',
    });
    expect(OFFER_COUNTS_AS_LOTS).toBe(3);
    // (3 × 400 + 300 + 200) / 5
    expect(lifeOnArrivalOf([lot(300), lot(200)], 'one', 400)).toMatchObject({
      lifeDays: 340,
      basis: 'offered and learnt',
      lots: 2,
    });
  });

  it('is learnt from others while this supplier brought none', () => {
    expect(lifeOnArrivalOf([lot(100, 'other'), lot(300, 'one')], 'one', null).lifeDays).toBe(300);
    expect(lifeOnArrivalOf([lot(100, 'other'), lot(300, null)], 'one', null).lifeDays).toBe(200);
    expect(lifeOnArrivalOf([lot(100, 'other'), lot(300, 'one')], null, null).lifeDays).toBe(200);
  });

  it('is limited by no date when most lots bear none', () => {
    expect(lifeOnArrivalOf([lot(null), lot(null), lot(100)], 'one', null)).toEqual({
      lifeDays: null,
      basis: 'no dates',
      lots: 2,
      leftOut: 0,
    });
    expect(lifeOnArrivalOf([lot(null), lot(100)], 'one', null).lifeDays).toBe(100);
    expect(lifeOnArrivalOf([lot(null), lot(null)], 'one', 90).lifeDays).toBe(90);
  });

  it('counts what came past its day as nothing, and leaves out what keeps longer than anything does', () => {
    expect(lifeOnArrivalOf([lot(-20), lot(100)], 'one', null)).toMatchObject({ lifeDays: 50, leftOut: 0 });
    expect(lifeOnArrivalOf([lot(LONGEST_LIFE_DAYS + 1), lot(100)], 'one', null)).toMatchObject({
      lifeDays: 100,
      lots: 1,
      leftOut: 1,
    });
  });

  it('counts the latest lots only', () => {
    const old = Array.from({ length: MOST_LOTS }, () => lot(700, 'one', '2024-02-29'));
    const late = Array.from({ length: MOST_LOTS }, () => lot(80));
    expect(lifeOnArrivalOf([...old, ...late], 'one', null)).toMatchObject({ lifeDays: 80, lots: MOST_LOTS });
  });

  it('lies between the shortest and the longest that was seen or said', () => {
    const anyDays = fc.integer({ min: 0, max: LONGEST_LIFE_DAYS });
    fc.assert(
      fc.property(fc.array(anyDays, { maxLength: MOST_LOTS }), fc.option(anyDays), (seen, offered) => {
        const { lifeDays } = lifeOnArrivalOf(
          seen.map((days) => lot(days)),
          'one',
          offered,
        );
        const all = [...seen, ...(offered === null ? [] : [offered])];
        if (all.length === 0) all.push(planningAssumptions.lifeOnArrivalDays.value);
        expect(Number.isSafeInteger(lifeDays)).toBe(true);
        expect(lifeDays).toBeGreaterThanOrEqual(Math.min(...all));
        expect(lifeDays).toBeLessThanOrEqual(Math.max(...all));
      }),
    );
  });
});

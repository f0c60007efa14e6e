import { describe, expect, it } from 'vitest';
import type { DemandModel } from '../demand/demand-model.js';
import { supposedBookings, supposedDemand, supposedLeadTime, supposedPrices } from './supposed.js';

describe('what is supposed to be different', () => {
  it('makes lead times longer or shorter, never less than nothing', () => {
    const usual = { days: [2, 4], weights: [0.5, 0.5] };
    expect(supposedLeadTime(usual, 1_500, 1)).toEqual({ days: [4, 7], weights: [0.5, 0.5] });
    expect(supposedLeadTime(usual, 1_000, -9)).toEqual({ days: [0], weights: [1] });
  });

  it('changes prices', () => {
    expect(supposedPrices([{ fromPacks: 1, packPriceMinor: 999 }], 1_100)).toEqual([
      { fromPacks: 1, packPriceMinor: 1_099 },
    ]);
  });

  it('adds and takes away sessions of a procedure on a day', () => {
    const booked = [1, 1, 2].map((day) => ({
      procedureId: 'brows',
      artistId: 'ana',
      visitKind: 'touch-up' as const,
      day,
      followsSessionId: null,
    }));
    const fewer = supposedBookings(booked, [{ procedureId: 'brows', day: 1, sessions: -5 }], () => 'ana');
    expect(fewer.map(({ day }) => day)).toEqual([2]);
    const more = supposedBookings(booked, [{ procedureId: 'lips', day: 3, sessions: 2 }], () => 'bea');
    expect(more.slice(3)).toEqual(
      [3, 3].map((day) => ({
        procedureId: 'lips',
        artistId: 'bea',
        visitKind: 'first session',
        day,
        followsSessionId: null,
      })),
    );
  });

  it('multiplies bookings and what nobody has booked yet, and leaves what is owed', () => {
    const amount = { amounts: [1], weights: [1] };
    const use = { chance: 0.8, firstDay: 1, dayWeights: [1], amount };
    const model: DemandModel = {
      days: 7,
      expected: [
        { ...use, source: 'booking' },
        { ...use, source: 'touch-up' },
      ],
      unforeseen: [
        {
          components: [
            { method: 'Croston', weight: 0.5, kind: 'negative binomial', mean: 2, dispersion: 1.5 },
            { method: 'bootstrap', weight: 0.5, kind: 'empirical', counts: [0, 1, 4] },
          ],
          periodDays: 7,
          dayShares: new Float64Array(7),
          unknownShares: new Float64Array(7),
          amount,
        },
      ],
    };
    const supposed = supposedDemand(model, 2_500);
    expect(supposed.expected.map(({ source, chance }) => [source, chance])).toEqual([
      ['booking', 0.8],
      ['booking', 0.8],
      ['booking', 0.4],
      ['touch-up', 0.8],
    ]);
    expect(supposed.unforeseen[0]?.components).toMatchObject([
      { mean: 5 },
      { counts: [0, 2, 10], weight: 0.25 },
      { counts: [0, 3, 10], weight: 0.25 },
    ]);
    expect(supposedDemand(model, 0).expected.map(({ source }) => source)).toEqual(['touch-up']);
    expect(supposedDemand(model, 1_000)).toBe(model);
  });

  it('keeps the mean of counts, also of single ones, at any factor', () => {
    const unforeseen = {
      components: [
        { method: 'bootstrap' as const, weight: 1, kind: 'empirical' as const, counts: [0, 0, 1, 0] },
      ],
      periodDays: 7,
      dayShares: new Float64Array(7),
      unknownShares: new Float64Array(7),
      amount: { amounts: [1], weights: [1] },
    };
    for (const perMille of [0, 100, 400, 1_400, 2_000]) {
      const supposed = supposedDemand({ days: 7, expected: [], unforeseen: [unforeseen] }, perMille);
      const components = supposed.unforeseen[0]?.components ?? [];
      expect(components.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
      const mean = components.reduce(
        (sum, each) =>
          sum +
          (each.kind === 'empirical'
            ? (each.weight * each.counts.reduce((all, count) => all + count, 0)) / 4
            : 0),
        0,
      );
      expect(mean).toBeCloseTo(perMille / 4_000, 9);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { itemFacts, offerOf, type SampleItem, sealed } from '../../../tests/support/planning-samples.js';
import { decideItem } from './item-decision.js';

const reasonsOf = (sample: SampleItem) => decideItem(itemFacts(sample)).reasons;
const codesOf = (sample: SampleItem) => reasonsOf(sample).map(({ code }) => code);

describe('the reasons of a line', () => {
  it('say what is needed, what is there, what happens without an order, what to order, and why not otherwise', () => {
    const codes = codesOf({
      usesPerWeek: 14,
      batches: [sealed(30, 1)],
      onTheWay: [{ containers: 10, unitsEach: 1, arrival: { days: [2], weights: [1] }, lifeDays: 500 }],
      onHoldUnits: 4,
      expected: [
        {
          source: 'booking',
          chance: 0.9,
          firstDay: 3,
          dayWeights: [1],
          amount: { amounts: [2], weights: [1] },
        },
        { source: 'course', chance: 1, firstDay: 6, dayWeights: [1], amount: { amounts: [8], weights: [1] } },
        {
          source: 'touch-up',
          chance: 0.6,
          firstDay: 9,
          dayWeights: [1],
          amount: { amounts: [2], weights: [1] },
        },
      ],
      paths: 1_000,
    });
    expect(codes).toEqual([
      'booked need',
      'course need',
      'touch-ups owed',
      'unforeseen need',
      'in stock',
      'on the way',
      'on hold',
      'runs short',
      'lead time',
      'order',
      'covers',
      'why not less',
      'why not more',
      ...(codes.includes('why not earlier') ? ['why not earlier'] : []),
      'why not later',
    ]);
  });

  it('hold the figures of the first weeks', () => {
    const reasons = reasonsOf({
      usesPerWeek: 7,
      batches: [sealed(10, 1)],
      expected: [
        {
          source: 'booking',
          chance: 0.8,
          firstDay: 3,
          dayWeights: [1],
          amount: { amounts: [2], weights: [1] },
        },
        {
          source: 'booking',
          chance: 1,
          firstDay: 100,
          dayWeights: [1],
          amount: { amounts: [50], weights: [1] },
        },
      ],
    });
    expect(reasons).toContainEqual({
      code: 'booked need',
      units: 1.6,
      sessions: 0.8,
      booked: 1,
      until: '2026-12-23',
    });
    expect(reasons).toContainEqual({
      code: 'unforeseen need',
      units: 28,
      unitsPerWeek: 7,
      until: '2026-12-23',
    });
    expect(reasons).toContainEqual({ code: 'lead time', typicalDays: 5, days95: 8 });
    expect(reasons).toContainEqual({ code: 'in stock', units: 10, containers: 10, opened: 0 });
  });

  it('show that what was chosen costs least', () => {
    for (const reason of reasonsOf({ usesPerWeek: 21, batches: [sealed(40, 1)], paths: 1_000 })) {
      if ('moreMinor' in reason) expect(reason.moreMinor).toBeGreaterThanOrEqual(-0.01);
    }
  });

  it('show so of bottles too of which most is discarded once they are open', () => {
    const decision = decideItem(
      itemFacts({
        unit: 'microlitres',
        usesPerWeek: 0.3,
        amounts: { amounts: [320], weights: [1] },
        days: 700,
        openedLifeDays: 90,
        offers: [
          offerOf({
            packContainers: 1,
            unitsEach: 10_000,
            lifeDays: 700,
            prices: [{ fromPacks: 1, packPriceMinor: 900 }],
          }),
        ],
        settings: { rangeChoice: 'keep in stock', orderCostMinor: 4_000 },
        paths: 1_000,
      }),
    );
    expect(decision.order?.packs).toBeGreaterThan(1);
    for (const reason of decision.reasons) {
      if ('moreMinor' in reason) expect(reason.moreMinor).toBeGreaterThanOrEqual(-0.01);
    }
  });

  it('tell what is missing before a delivery can come, and count the days it lasts from then on', () => {
    const { reasons, after } = decideItem(
      itemFacts({ usesPerWeek: 21, batches: [sealed(2, 1)], paths: 1_000 }),
    );
    expect(reasons.find(({ code }) => code === 'too late')).toMatchObject({ arrival: '2026-12-01' });
    expect(after.coverDays).toBeGreaterThan(15);
  });

  it('tell what expires and what a pack holds too much', () => {
    const codes = codesOf({
      unit: 'microlitres',
      usesPerWeek: 0.3,
      amounts: { amounts: [500], weights: [1] },
      days: 730,
      openedLifeDays: 90,
      batches: [sealed(1, 15_000, 60)],
      offers: [offerOf({ packContainers: 1, unitsEach: 15_000, lifeDays: 700 })],
    });
    expect(codes).toContain('expires');
    expect(codes).toContain('pack exceeds need');
    expect(codes).toContain('range');
  });

  it('tell when nobody needs it and when nobody offers it', () => {
    expect(codesOf({ usesPerWeek: 0, offers: [] })).toEqual([
      'no need expected',
      'in stock',
      'lasts',
      'no offer',
    ]);
  });

  it('tell for whom is ordered when it is for the appointment', () => {
    const reasons = reasonsOf({
      usesPerWeek: 0.1,
      settings: { rangeChoice: 'order for the appointment' },
      expected: [
        {
          source: 'booking',
          chance: 0.95,
          firstDay: 20,
          dayWeights: [1],
          amount: { amounts: [3], weights: [1] },
        },
      ],
    });
    expect(reasons).toContainEqual({
      code: 'appointments to order for',
      sessions: 1,
      units: 3,
      firstOn: '2026-12-16',
    });
    expect(reasons.some(({ code }) => code === 'order')).toBe(true);
  });
});

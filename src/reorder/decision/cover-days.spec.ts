import { describe, expect, it } from 'vitest';
import {
  itemFacts,
  replenishmentOf,
  type SampleItem,
  sealed,
} from '../../../tests/support/planning-samples.js';
import { coverDays, coverDaysWith } from './cover-days.js';

/** Two pieces a day, certain. */
const even: SampleItem = {
  usesPerWeek: 0,
  days: 100,
  expected: Array.from({ length: 100 }, (_, firstDay) => ({
    source: 'booking' as const,
    chance: 1,
    firstDay,
    dayWeights: [1],
    amount: { amounts: [2], weights: [1] },
  })),
  paths: 50,
};
const tenPieces = replenishmentOf({
  packContainers: 10,
  leadTime: { days: [3, 4, 9], weights: [0.3, 0.4, 0.3] },
});

describe('the days a stock lasts', () => {
  it('are those until something is missing', () => {
    expect(coverDays(itemFacts({ ...even, batches: [sealed(20, 1)] }))).toBe(10);
  });

  it('go on with what is ordered in time', () => {
    const facts = itemFacts({ ...even, batches: [sealed(20, 1)] });
    expect(coverDaysWith(facts, tenPieces, { day: 2, packs: 3 })).toBe(25);
  });

  it('do not end with what is missing before a delivery can come', () => {
    // Missing on days 1, 2 and 3; here on day 4, and thirty pieces last fifteen days.
    const facts = itemFacts({ ...even, batches: [sealed(2, 1)] });
    expect(coverDaysWith(facts, tenPieces, { day: 0, packs: 3 })).toBe(19);
  });

  it('do not end either with what is missing before another delivery, which goes on serving', () => {
    // Missing on day 1 only: forty pieces come on day 2, the ten ordered on day 4.
    const arrival = { days: [2], weights: [1] };
    const onTheWay = [{ containers: 40, unitsEach: 1, arrival, lifeDays: 300, costEachMinor: null }];
    const facts = itemFacts({ ...even, batches: [sealed(2, 1)], onTheWay });
    expect(coverDaysWith(facts, tenPieces, { day: 0, packs: 1 })).toBe(27);
  });

  it('end with what is missing after all where a delivery comes at once', () => {
    const atOnce = replenishmentOf({ packContainers: 10, leadTime: { days: [0], weights: [1] } });
    expect(coverDaysWith(itemFacts(even), atOnce, { day: 0, packs: 1 })).toBe(5);
  });
});

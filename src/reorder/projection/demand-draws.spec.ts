import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type {
  AmountDistribution,
  CountComponent,
  DemandModel,
  UnforeseenUse,
} from '../demand/demand-model.js';
import { type DemandDraws, drawDemand, seedOfItem } from './demand-draws.js';

const one: AmountDistribution = { amounts: [1], weights: [1] };

function weekly(components: CountComponent[], days: number, unknown = 1, amount = one): UnforeseenUse {
  return {
    components,
    periodDays: 7,
    // Closed on the last two days of a week.
    dayShares: Float64Array.from({ length: days }, (_, day) => [0.1, 0.2, 0.3, 0.2, 0.2, 0, 0][day % 7] ?? 0),
    unknownShares: new Float64Array(days).fill(unknown),
    amount,
  };
}

function negativeBinomial(mean: number, dispersion: number, weight = 1): CountComponent {
  return { method: 'simple smoothing', weight, kind: 'negative binomial', mean, dispersion };
}

/** Units of each path on the days from one up to, not including, another. */
function unitsOf(draws: DemandDraws, from: number, to: number): number[] {
  return Array.from({ length: draws.paths }, (_, path) => {
    let units = 0;
    for (let event = draws.offsets[path] ?? 0; event < (draws.offsets[path + 1] ?? 0); event++) {
      const day = draws.eventDays[event] ?? 0;
      if (day >= from && day < to) units += draws.eventUnits[event] ?? 0;
    }
    return units;
  });
}

function expectMoments(figures: readonly number[], mean: number, variance: number): void {
  const seen = figures.reduce((sum, figure) => sum + figure, 0) / figures.length;
  const seenVariance = figures.reduce((sum, figure) => sum + (figure - seen) ** 2, 0) / (figures.length - 1);
  expect(Math.abs(seen - mean)).toBeLessThan(4 * Math.sqrt(variance / figures.length));
  // The error of a variance by the fourth moment of what was seen.
  const fourth = figures.reduce((sum, figure) => sum + (figure - seen) ** 4, 0) / figures.length;
  expect(Math.abs(seenVariance - variance)).toBeLessThan(
    4 * Math.sqrt((fourth - seenVariance ** 2) / figures.length),
  );
}

const seed = 20_261_126;

describe('drawn needs', () => {
  it('have the mean and the variance of their counts, thinned by what is known and spread over open days', () => {
    const unforeseen = [weekly([negativeBinomial(6, 2)], 70, 0.5)];
    const draws = drawDemand({ days: 70, expected: [], unforeseen }, { paths: 20_000, seed });
    // Half of a negative binomial is one again, of half the mean and half of what is beyond 1 in the dispersion.
    expectMoments(unitsOf(draws, 0, 7), 3, 3 * 1.5);
    expectMoments(unitsOf(draws, 0, 70), 30, 30 * 1.5);
    // Of one day: a fifth of that half.
    expectMoments(unitsOf(draws, 10, 11), 6 * 0.5 * 0.2, 0.6 * 1.1);
    expect(new Set([...draws.eventDays].map((day) => day % 7))).toEqual(new Set([0, 1, 2, 3, 4]));
  });

  it('draw one component for a whole path, so that an unsure level stays unsure over many weeks', () => {
    const unforeseen = [weekly([negativeBinomial(0, 1, 1), negativeBinomial(4, 1, 3)], 70)];
    const draws = drawDemand({ days: 70, expected: [], unforeseen }, { paths: 20_000, seed });
    // 0 or Poisson of 40: the variance is that within, 30, and that between, 40² · 3/16.
    expectMoments(unitsOf(draws, 0, 70), 30, 30 + 300);
  });

  it('come as a sample did', () => {
    const counts = [0, 0, 0, 0, 3, 9];
    const unforeseen = [weekly([{ method: 'bootstrap', weight: 1, kind: 'empirical', counts }], 14)];
    const draws = drawDemand({ days: 14, expected: [], unforeseen }, { paths: 20_000, seed });
    expectMoments(unitsOf(draws, 7, 14), 2, 15 - 4);
  });

  it('take an amount each', () => {
    const amount = { amounts: [0, 100, 250], weights: [1, 2, 1] };
    const unforeseen = [weekly([negativeBinomial(2, 1)], 7, 1, amount)];
    const draws = drawDemand({ days: 7, expected: [], unforeseen }, { paths: 20_000, seed });
    // A compound Poisson: rate times the first and the second moment.
    expectMoments(unitsOf(draws, 0, 7), 2 * 112.5, 2 * (0.5 * 100 ** 2 + 0.25 * 250 ** 2));
  });

  it('let an expected use come with its chance on one of its days', () => {
    const model: DemandModel = {
      days: 5,
      unforeseen: [],
      expected: [{ source: 'touch-up', chance: 0.6, firstDay: 2, dayWeights: [1, 1, 1, 1], amount: one }],
    };
    const draws = drawDemand(model, { paths: 20_000, seed });
    // A fourth falls after the days looked ahead.
    for (const day of [2, 3, 4]) expectMoments(unitsOf(draws, day, day + 1), 0.15, 0.15 * 0.85);
    expectMoments(unitsOf(draws, 0, 5), 0.45, 0.45 * 0.55);
  });

  it('are in order by day, one a day, at least one unit', () => {
    const amount = fc
      .array(fc.nat({ max: 300 }), { minLength: 1, maxLength: 4 })
      .map((amounts) => ({ amounts, weights: amounts.map(() => 1) }));
    const model = fc
      .tuple(
        fc.integer({ min: 0, max: 80 }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        amount,
      )
      .map(
        ([days, mean, unknown, amounts]): DemandModel => ({
          days,
          expected: [
            {
              source: 'booking',
              chance: 0.9,
              firstDay: -3,
              dayWeights: Array.from({ length: 100 }, () => 1),
              amount: amounts,
            },
          ],
          unforeseen: [weekly([negativeBinomial(mean, 1.5)], days, unknown, amounts)],
        }),
      );
    fc.assert(
      fc.property(model, fc.integer(), (made, anySeed) => {
        const draws = drawDemand(made, { paths: 20, seed: anySeed });
        expect(draws.offsets[0]).toBe(0);
        expect(draws.offsets[20]).toBe(draws.eventDays.length);
        for (let path = 0; path < 20; path++) {
          const from = draws.offsets[path] ?? 0;
          const to = draws.offsets[path + 1] ?? 0;
          for (let event = from; event < to; event++) {
            expect(draws.eventUnits[event]).toBeGreaterThan(0);
            expect(draws.eventDays[event]).toBeLessThan(made.days);
            if (event > from) expect(draws.eventDays[event]).toBeGreaterThan(draws.eventDays[event - 1] ?? 0);
          }
        }
      }),
    );
  });

  it('are the same for the same seed, and begin alike when more paths are drawn', () => {
    const model: DemandModel = {
      days: 70,
      expected: [{ source: 'booking', chance: 0.9, firstDay: 3, dayWeights: [1], amount: one }],
      unforeseen: [weekly([negativeBinomial(0.3, 1.4), negativeBinomial(3, 1)], 70)],
    };
    const fewer = drawDemand(model, { paths: 100, seed });
    const more = drawDemand(model, { paths: 300, seed });
    expect(drawDemand(model, { paths: 100, seed })).toEqual(fewer);
    expect(unitsOf(more, 0, 70).slice(0, 100)).toEqual(unitsOf(fewer, 0, 70));
    expect(unitsOf(drawDemand(model, { paths: 100, seed: seed + 1 }), 0, 70)).not.toEqual(
      unitsOf(fewer, 0, 70),
    );
  });

  it('are what they were but for it when another booking is added', () => {
    const unforeseen = [weekly([negativeBinomial(3, 1.4)], 70)];
    const booking = {
      source: 'booking' as const,
      chance: 1,
      firstDay: 3,
      dayWeights: [1],
      amount: { amounts: [17], weights: [1] },
    };
    const perhaps = { ...booking, chance: 0.5 };
    const without = drawDemand({ days: 70, expected: [perhaps], unforeseen }, { paths: 200, seed });
    const added = drawDemand({ days: 70, expected: [perhaps, booking], unforeseen }, { paths: 200, seed });
    expect(unitsOf(added, 0, 70)).toEqual(unitsOf(without, 0, 70).map((units) => units + 17));
  });

  it('are none of an empty model', () => {
    const draws = drawDemand({ days: 120, expected: [], unforeseen: [] }, { paths: 5, seed });
    expect([...draws.offsets]).toEqual([0, 0, 0, 0, 0, 0]);
    expect(draws.eventDays.length).toBe(0);
  });

  it('are refused for absurd sizes and models', () => {
    const model: DemandModel = { days: 14, expected: [], unforeseen: [] };
    expect(() => drawDemand(model, { paths: 0, seed })).toThrow('0 paths were asked for');
    expect(() => drawDemand({ ...model, days: 1e6 }, { paths: 1, seed })).toThrow('Needs of 1000000 days');
    const uneven = { ...one, weights: [] };
    const absurd: [Partial<DemandModel>, string][] = [
      [
        { expected: [{ source: 'booking', chance: 1.2, firstDay: 0, dayWeights: [1], amount: one }] },
        'The chance of a use is 1.2',
      ],
      [
        { expected: [{ source: 'booking', chance: 1, firstDay: 0, dayWeights: [], amount: one }] },
        'The weights add up to 0',
      ],
      [
        { unforeseen: [weekly([negativeBinomial(1, 1)], 14, 1, uneven)] },
        'There are 1 amounts and 0 weights',
      ],
      [
        { unforeseen: [weekly([negativeBinomial(1, 1)], 14, 1.5)] },
        "The shares of a period's days add up to 1.5",
      ],
      [
        { unforeseen: [weekly([negativeBinomial(1, 1)], 7)] },
        'There are shares of 7 days: 14 days are drawn.',
      ],
      [{ unforeseen: [weekly([], 14)] }, 'The weights add up to 0'],
    ];
    for (const [part, message] of absurd) {
      expect(() => drawDemand({ ...model, ...part }, { paths: 1, seed })).toThrow(message);
    }
  });
});

describe('the seed of an item', () => {
  it('is its own', () => {
    const seeds = new Set(Array.from({ length: 10_000 }, (_, index) => seedOfItem(1, `item ${index}`)));
    // Ten thousand numbers of 32 bits meet about once in a hundred times.
    expect(seeds.size).toBeGreaterThan(9_997);
    expect(seedOfItem(1, 'item 7')).toBe(seedOfItem(1, 'item 7'));
    expect(seedOfItem(2, 'item 7')).not.toBe(seedOfItem(1, 'item 7'));
  });
});

import { describe, expect, it } from 'vitest';
import { demandOf } from '../../../tests/support/planning-samples.js';
import { drawDemand } from '../projection/demand-draws.js';
import { meanNeedPerDay, needsOverDays, needsOverLeadTime, quantileOf, shareBelow } from './drawn-needs.js';

const leadTime = { days: [3, 5, 8], weights: [0.2, 0.5, 0.3] };

describe('needs over a lead time', () => {
  // Lead time L of 3, 5 or 8 days, Poisson 0.7 a day: S = 7, 8, 9, 10 at 90, 95, 98, 99 %, F(8) = 0.9606989679,
  // exact, from the project's reference values [R].
  const draws = drawDemand(demandOf({ usesPerWeek: 4.9, days: 90 }), { paths: 20_000, seed: 3 });
  const needs = needsOverLeadTime(draws, leadTime, 0, 60);

  it('has the quantiles of a Poisson need over a random lead time', () => {
    expect([0.9, 0.95, 0.98, 0.99].map((chance) => quantileOf(needs, chance))).toEqual([7, 8, 9, 10]);
    // Windows of a path overlap little: at worst each path counts once.
    const error = Math.sqrt((0.9607 * 0.0393) / 20_000);
    expect(Math.abs(shareBelow(needs, 9) - 0.960_698_967_9)).toBeLessThan(4 * error);
  });

  it('has their mean', () => {
    let sum = 0;
    for (const need of needs) sum += need;
    // Variance 5.4425 [R].
    expect(Math.abs(sum / needs.length - 3.85)).toBeLessThan(4 * Math.sqrt(5.4425 / 20_000));
  });

  it('moves by exactly what is booked inside the interval', () => {
    const booked = demandOf({
      usesPerWeek: 4.9,
      days: 8,
      expected: [
        {
          source: 'booking',
          chance: 1,
          firstDay: 1,
          dayWeights: [1],
          amount: { amounts: [6], weights: [1] },
        },
      ],
    });
    const bare = needsOverLeadTime(
      drawDemand(demandOf({ usesPerWeek: 4.9, days: 8 }), { paths: 2_000, seed: 3 }),
      leadTime,
      0,
      1,
    );
    const moved = needsOverLeadTime(drawDemand(booked, { paths: 2_000, seed: 3 }), leadTime, 0, 1);
    expect(Array.from(moved)).toEqual(Array.from(bare, (need) => need + 6));
  });
});

it('knows the mean need of a day and the need of fixed days', () => {
  const draws = drawDemand(demandOf({ usesPerWeek: 14, days: 70 }), { paths: 4_000, seed: 5 });
  expect(Math.abs(meanNeedPerDay(draws) - 2)).toBeLessThan(4 * Math.sqrt(2 / 70 / 4_000));
  const needs = needsOverDays(draws, 10);
  expect(needs).toHaveLength(4_000);
  expect(quantileOf(needs, 0.5)).toBe(20);
});

it('is nothing where nothing was drawn', () => {
  const draws = drawDemand(demandOf({ usesPerWeek: 0, days: 10 }), { paths: 5, seed: 5 });
  expect(meanNeedPerDay(draws)).toBe(0);
  expect(quantileOf(needsOverLeadTime(draws, leadTime, 1, 10), 0.99)).toBe(0);
  expect(quantileOf(new Float64Array(), 0.5)).toBe(0);
  expect(shareBelow(new Float64Array(), 1)).toBe(0);
});

import { expect, it } from 'vitest';
import { demandOf } from '../../../tests/support/planning-samples.js';
import { expectedNeed, meanAmount, sumOfNeed, usesPerYear } from './expected-need.js';

it('adds up what is booked, owed and unforeseen by day, chance and amount', () => {
  const model = demandOf({
    days: 28,
    usesPerWeek: 3.5,
    unknownShares: [0.5],
    amounts: { amounts: [1, 3], weights: [0.5, 0.5] },
    expected: [
      {
        source: 'booking',
        chance: 0.9,
        firstDay: 2,
        dayWeights: [1],
        amount: { amounts: [4], weights: [1] },
      },
      { source: 'course', chance: 1, firstDay: 20, dayWeights: [1], amount: { amounts: [10], weights: [1] } },
      {
        source: 'touch-up',
        chance: 0.6,
        firstDay: 12,
        dayWeights: [0.25, 0.25, 0.5],
        amount: { amounts: [2], weights: [1] },
      },
    ],
  });
  const need = expectedNeed(model, 14);
  expect(need.bookings).toEqual({ uses: 0.9, units: 3.6, booked: 1 });
  expect(need.courses).toEqual({ uses: 0, units: 0 });
  expect(need.touchUps.uses).toBeCloseTo(0.3, 12);
  expect(need.unforeseen.uses).toBeCloseTo(3.5, 12);
  expect(need.unforeseen.units).toBeCloseTo(7, 12);
  expect(sumOfNeed(need).units).toBeCloseTo(3.6 + 0.6 + 7, 12);
});

it('tells the uses of a year by the series even when nearly all of the next days are booked', () => {
  expect(usesPerYear(demandOf({ days: 60, usesPerWeek: 0.5, unknownShares: [0] }))).toBeCloseTo(26.07, 2);
});

it('is nothing without a need', () => {
  expect(sumOfNeed(expectedNeed(demandOf({ usesPerWeek: 0 })))).toEqual({ units: 0, uses: 0 });
  expect(usesPerYear(demandOf({ usesPerWeek: 0 }))).toBe(0);
  expect(meanAmount({ amounts: [], weights: [] })).toBe(0);
});

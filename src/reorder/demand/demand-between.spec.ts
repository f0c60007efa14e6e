import { expect, it } from 'vitest';
import { demandBetween } from './demand-between.js';
import type { DemandModel } from './demand-model.js';

const amount = { amounts: [1], weights: [1] };
const model: DemandModel = {
  days: 4,
  expected: [
    { source: 'touch-up', chance: 0.8, firstDay: 1, dayWeights: [0.25, 0.75], amount },
    { source: 'booking', chance: 1, firstDay: 0, dayWeights: [1], amount },
  ],
  unforeseen: [
    {
      ...{ components: [], periodDays: 7, amount },
      dayShares: Float64Array.of(0.25, 0.25, 0.25, 0.25),
      unknownShares: Float64Array.of(0.1, 0.2, 0.3, 0.4),
    },
  ],
};

it('keeps of each use what falls on the days, and drops what does not', () => {
  const { expected, unforeseen } = demandBetween(model, 2, 4);
  expect(expected).toHaveLength(1);
  expect(expected[0]).toMatchObject({ firstDay: 1, dayWeights: [0, 1] });
  expect(expected[0]?.chance).toBeCloseTo(0.6, 12);
  expect([...(unforeseen[0]?.unknownShares ?? [])]).toEqual([0, 0, 0.3, 0.4]);
});

it('is the whole over all days and nothing over none', () => {
  expect(demandBetween(model, 0, 4)).toBe(model);
  expect(demandBetween(model, 2, 2)).toEqual({ days: 4, expected: [], unforeseen: [] });
});

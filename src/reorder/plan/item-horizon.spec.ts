import { expect, it } from 'vitest';
import { NEVER } from '../projection/item-facts.js';
import { FEWEST_TAIL_DAYS, firstDaysOf, MOST_TAIL_DAYS, tailDays } from './item-horizon.js';

it('follows what is left until it is used or past its date', () => {
  expect(tailDays(100, 5, NEVER)).toBe(40);
  expect(tailDays(10, 0.01, 400)).toBe(401);
  expect(tailDays(10, 0.01, NEVER)).toBe(MOST_TAIL_DAYS);
  expect(tailDays(10, 0, 90)).toBe(91);
  expect(tailDays(0, 5, NEVER)).toBe(FEWEST_TAIL_DAYS);
});

it('cuts a model to its first days', () => {
  const amount = { amounts: [1], weights: [1] };
  const model = {
    days: 10,
    expected: [2, 7].map((firstDay) => ({
      source: 'booking' as const,
      chance: 1,
      firstDay,
      dayWeights: [1],
      amount,
    })),
    unforeseen: [
      {
        components: [],
        periodDays: 7,
        dayShares: Float64Array.from({ length: 10 }, (_, day) => day),
        unknownShares: new Float64Array(10),
        amount,
      },
    ],
  };
  const short = firstDaysOf(model, 5);
  expect(short.days).toBe(5);
  expect(short.expected.map(({ firstDay }) => firstDay)).toEqual([2]);
  expect([...(short.unforeseen[0]?.dayShares ?? [])]).toEqual([0, 1, 2, 3, 4]);
  expect(firstDaysOf(model, 20)).toBe(model);
});

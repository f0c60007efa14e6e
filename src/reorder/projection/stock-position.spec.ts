import { expect, it } from 'vitest';
import { NEVER } from './item-facts.js';
import { stockPosition } from './stock-position.js';

it('the position of a stock is what is usable here and what is on the way', () => {
  const sealed = { opened: false, costEachMinor: null };
  const batches = [
    { ...sealed, containers: 3, unitsEach: 100, lastDay: NEVER },
    { ...sealed, containers: 1, unitsEach: 40, lastDay: 0, opened: true },
    { ...sealed, containers: 9, unitsEach: 100, lastDay: -1 },
  ];
  const arrival = { days: [-2, 4], weights: [0.5, 0.5] };
  const onTheWay = [{ containers: 2, unitsEach: 50, arrival, lifeDays: 300, costEachMinor: null }];
  expect(stockPosition({ batches, onTheWay, openedLifeDays: 90 })).toBe(440);
  expect(stockPosition({ batches: [], onTheWay: [], openedLifeDays: NEVER })).toBe(0);
});

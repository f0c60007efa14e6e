import { expect, it } from 'vitest';
import { type Batch, NEVER } from '../projection/item-facts.js';
import { realShelves } from './real-shelves.js';

const batch = (containers: number, lastDay = NEVER): Batch => ({
  ...{ containers, unitsEach: 1, lastDay, opened: false, costEachMinor: null },
});
const piecesOf = (past: Partial<Parameters<typeof realShelves>[0]>) =>
  [...realShelves({ stock: [], received: [], needs: [], openedLifeDays: NEVER, ...past }, -21, 7)].map(
    ([day, { batches }]) => [day, batches.reduce((sum, { containers }) => sum + containers, 0)],
  );

it('holds what came, until it was needed or ended, and nothing of what came later', () => {
  expect(piecesOf({ stock: [batch(5)], needs: [{ day: -20, units: 2 }] })).toEqual([
    [-21, 5],
    [-14, 3],
    [-7, 3],
  ]);
  expect(piecesOf({ stock: [batch(5, -8)] })).toEqual([
    [-21, 5],
    [-14, 5],
    [-7, 0],
  ]);
  expect(piecesOf({ received: [{ day: -14, batch: batch(4) }] })).toEqual([
    [-21, 0],
    [-14, 0],
    [-7, 4],
  ]);
});

it('counts last days from the morning that is looked at', () => {
  const shelves = realShelves(
    { stock: [batch(1, -2)], received: [], needs: [], openedLifeDays: NEVER },
    -21,
    7,
  );
  expect(shelves.get(-14)?.batches).toMatchObject([{ lastDay: 12 }]);
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runningTotals, sumOf } from './running-totals.js';

it('tells what was on hand after each movement, the latest first', () => {
  const movements = [
    { pieces: -1, microlitres: -10_000 },
    { pieces: 0, microlitres: -200 },
    { pieces: 3, microlitres: 30_200 },
  ];
  expect(runningTotals(movements, { pieces: 2, microlitres: 20_000 }).map(({ after }) => after)).toEqual([
    { pieces: 2, microlitres: 20_000 },
    { pieces: 3, microlitres: 30_000 },
    { pieces: 3, microlitres: 30_200 },
  ]);
});

const amount = fc.record({
  pieces: fc.integer({ min: -99, max: 99 }),
  microlitres: fc.integer({ min: -9e6, max: 9e6 }),
});

it('comes to nothing before the first movement, whatever was booked', () => {
  fc.assert(
    fc.property(fc.array(amount, { minLength: 1 }), (movements) => {
      const totals = runningTotals(movements, sumOf(movements));
      const first = totals.at(-1);
      expect(first?.after).toEqual({
        pieces: first?.movement.pieces,
        microlitres: first?.movement.microlitres,
      });
    }),
  );
});

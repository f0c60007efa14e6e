import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NEVER } from '../projection/item-facts.js';
import { StockWalk } from './stock-walk.js';

const batch = (containers: number, unitsEach: number, lastDay = NEVER, opened = false) => ({
  ...{ containers, unitsEach, lastDay, opened },
  costEachMinor: 10 * unitsEach,
});

describe('a shelf walked through real days', () => {
  it('takes what expires first, and throws away what is left on its last day', () => {
    const shelf = new StockWalk(NEVER, 0);
    shelf.add([batch(1, 6, 12), batch(1, 4, 5)]);
    expect(shelf.take(5, 3)).toBe(0);
    expect(shelf.discard(5)).toEqual({ units: 1, minor: 10 });
    expect(shelf.units).toBe(6);
    expect(shelf.take(12, 5)).toBe(0);
    expect(shelf.discard(12)).toEqual({ units: 1, minor: 10 });
    expect(shelf.take(13, 2)).toBe(2);
  });

  it('opens a bottle only when the opened one is empty, and an opened one ends by its opened life', () => {
    const shelf = new StockWalk(30, 0);
    shelf.add([batch(2, 1_000, 300)]);
    expect(shelf.take(0, 200)).toBe(0);
    expect(shelf.batches(0)).toEqual([
      { containers: 1, unitsEach: 800, lastDay: 30, opened: true, costEachMinor: 8_000 },
      { containers: 1, unitsEach: 1_000, lastDay: 300, opened: false, costEachMinor: 10_000 },
    ]);
    expect(shelf.discard(29).units).toBe(0);
    expect(shelf.discard(30).units).toBe(800);
  });

  it('does not use what is past its day', () => {
    const shelf = new StockWalk(NEVER, 0);
    shelf.add([batch(1, 5, 3)]);
    expect(shelf.take(4, 2)).toBe(2);
    expect(shelf.discard(4).units).toBe(5);
  });

  it('loses nothing: what came was taken, thrown away or is here', () => {
    const steps = fc.array(
      fc.record({ add: fc.nat(3), each: fc.nat(900), life: fc.nat(40), need: fc.nat(1_500) }),
      { maxLength: 30 },
    );
    fc.assert(
      fc.property(steps, fc.nat(20), (days, openedLife) => {
        const shelf = new StockWalk(openedLife, 1);
        let balance = 0;
        for (const [day, { add, each, life, need }] of days.entries()) {
          shelf.add([batch(add, each, day + life)]);
          balance += add * each;
          balance -= need - shelf.take(day, need);
          balance -= shelf.discard(day).units;
          expect(shelf.units).toBe(balance);
        }
      }),
    );
  });
});

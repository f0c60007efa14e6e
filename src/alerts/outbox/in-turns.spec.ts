import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inTurns } from './in-turns.js';

describe('inTurns', () => {
  it('takes one of each list in turn, and goes on with those that have more', () => {
    expect(inTurns([['a1', 'a2', 'a3'], [], ['c1'], ['d1', 'd2']])).toEqual([
      'a1',
      'c1',
      'd1',
      'a2',
      'd2',
      'a3',
    ]);
  });

  it('loses nothing, keeps the order of each list, and lets nobody wait for more than one of each other', () => {
    const lists = fc.array(fc.array(fc.nat(), { maxLength: 8 }), { maxLength: 6 });
    fc.assert(
      fc.property(lists, (given) => {
        const named = given.map((list, which) => list.map((_, index) => ({ which, index })));
        const turns = inTurns(named);
        for (const [which, list] of named.entries()) {
          expect(turns.filter((each) => each.which === which)).toEqual(list);
        }
        for (const [place, { index }] of turns.entries()) {
          expect(place).toBeLessThan((index + 1) * named.length);
        }
      }),
    );
  });
});

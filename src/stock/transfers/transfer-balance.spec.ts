import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrivalOfLine } from './arrival-of-line.js';
import {
  type LineBalance,
  lineBalance,
  lineState,
  minus,
  nothing,
  partOf,
  plus,
  type Quantity,
  type SaidOfLine,
} from './transfer-balance.js';

const quantity = fc.record({
  pieces: fc.integer({ min: 1, max: 500 }),
  microlitres: fc.integer({ min: 0, max: 100_000 }),
});
const bottle: Quantity = { pieces: 1, microlitres: 9_500 };

function sumOf({ inTransit, arrived, lost, back }: LineBalance): Quantity {
  return [inTransit, arrived, lost, back].reduce(plus, nothing);
}

describe('a part of a quantity', () => {
  it('is all of it when all pieces are taken, and its share in whole microlitres when some are', () => {
    expect(partOf(bottle, 1)).toEqual(bottle);
    expect(partOf({ pieces: 3, microlitres: 100 }, 1)).toEqual({ pieces: 1, microlitres: 33 });
    expect(partOf(bottle, 0)).toEqual(nothing);
  });

  it('and the rest are the whole, neither below zero', () => {
    fc.assert(
      fc.property(quantity, fc.nat(600), (whole, pieces) => {
        const part = partOf(whole, pieces);
        const rest = minus(whole, part);
        expect(plus(part, rest)).toEqual(whole);
        expect(Math.min(part.pieces, part.microlitres, rest.pieces, rest.microlitres)).toBeGreaterThanOrEqual(
          0,
        );
        expect(part.pieces).toBe(Math.min(pieces, whole.pieces));
      }),
    );
  });
});

describe('the balance of a line', () => {
  const arrived = (came: Quantity, lost: Quantity = nothing): SaidOfLine => ({ kind: 'arrived', came, lost });

  it('has all of it in transit until somebody says what became of it', () => {
    const balance = lineBalance(bottle, []);
    expect(balance).toEqual({
      sent: bottle,
      inTransit: bottle,
      arrived: nothing,
      lost: nothing,
      back: nothing,
    });
    expect(lineState(balance)).toBe('in transit');
  });

  it('has nothing in transit once it ended, whatever is missing', () => {
    const box = { pieces: 20, microlitres: 0 };
    const short = lineBalance(box, [arrived({ pieces: 17, microlitres: 0 }, { pieces: 3, microlitres: 0 })]);
    expect(short).toMatchObject({ inTransit: nothing, arrived: { pieces: 17 }, lost: { pieces: 3 } });
    expect(lineState(short)).toBe('arrived');
    expect(lineState(lineBalance(bottle, [arrived(nothing, bottle)]))).toBe('lost');
    const back = lineBalance(bottle, [{ kind: 'withdrawn', came: bottle, lost: nothing }]);
    expect(back).toMatchObject({ inTransit: nothing, arrived: nothing, back: bottle });
    expect(lineState(back)).toBe('withdrawn');
  });

  it('adds up to what was sent after every thing that is said of it, and never below zero', () => {
    const saying = fc.oneof(
      fc.record({ pieces: fc.nat(600), turnedUp: fc.boolean() }),
      fc.constant('withdrawn' as const),
    );
    fc.assert(
      fc.property(quantity, fc.array(saying, { maxLength: 8 }), (sent, sayings) => {
        const said: SaidOfLine[] = [];
        for (const one of sayings) {
          const before = lineBalance(sent, said);
          if (one === 'withdrawn') {
            if (lineState(before) === 'in transit')
              said.push({ kind: 'withdrawn', came: sent, lost: nothing });
          } else {
            const became = arrivalOfLine(before, one);
            if (!('refusal' in became)) {
              const kind = one.turnedUp ? 'turned up' : 'arrived';
              said.push({ kind, came: became.arrived, lost: became.lost });
            }
          }
          const after = lineBalance(sent, said);
          expect(sumOf(after)).toEqual(sent);
          for (const part of [after.inTransit, after.arrived, after.lost, after.back]) {
            expect(Math.min(part.pieces, part.microlitres)).toBeGreaterThanOrEqual(0);
          }
        }
        // It ends once: all further sayings are of what was lost.
        expect(said.filter(({ kind }) => kind !== 'turned up').length).toBeLessThanOrEqual(1);
      }),
    );
  });
});

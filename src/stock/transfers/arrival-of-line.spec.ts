import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrivalOfLine, intoContainers } from './arrival-of-line.js';
import { lineBalance, nothing, plus, type SaidOfLine } from './transfer-balance.js';

const box = { pieces: 20, microlitres: 0 };
const onItsWay = lineBalance(box, []);

function onceSaid(said: SaidOfLine) {
  return lineBalance(box, [said]);
}

const short = onceSaid({
  kind: 'arrived',
  came: { pieces: 17, microlitres: 0 },
  lost: { pieces: 3, microlitres: 0 },
});

describe('the arrival of a line', () => {
  it('loses what is missing, and counts what is too much as surplus', () => {
    expect(arrivalOfLine(onItsWay, { pieces: 20, turnedUp: false })).toEqual({
      arrived: box,
      lost: nothing,
      surplusPieces: 0,
    });
    expect(arrivalOfLine(onItsWay, { pieces: 17, turnedUp: false })).toMatchObject({
      arrived: { pieces: 17 },
      lost: { pieces: 3 },
      surplusPieces: 0,
    });
    expect(arrivalOfLine(onItsWay, { pieces: 0, turnedUp: false })).toMatchObject({
      arrived: nothing,
      lost: { pieces: 20 },
    });
    expect(arrivalOfLine(onItsWay, { pieces: 22, turnedUp: false })).toMatchObject({
      arrived: { pieces: 20 },
      lost: nothing,
      surplusPieces: 2,
    });
  });

  it('is recorded once, and says what is recorded already and what to do', () => {
    const again = arrivalOfLine(short, { pieces: 3, turnedUp: false });
    expect(again).toEqual({ refusal: expect.stringContaining('17 of 20 pieces arrived, 3 were lost') });
    expect(again).toEqual({ refusal: expect.stringContaining('turnedUp') });
    const whole = onceSaid({ kind: 'arrived', came: box, lost: nothing });
    expect(arrivalOfLine(whole, { pieces: 1, turnedUp: false })).toEqual({
      refusal: expect.stringContaining('count the box'),
    });
  });

  it('is refused of what was called back, with what to ask for', () => {
    const back = onceSaid({ kind: 'withdrawn', came: box, lost: nothing });
    expect(arrivalOfLine(back, { pieces: 20, turnedUp: false })).toEqual({
      refusal: expect.stringContaining('send it again'),
    });
  });

  it('takes what turns up from what was lost, and no more', () => {
    expect(arrivalOfLine(short, { pieces: 2, turnedUp: true })).toEqual({
      arrived: { pieces: 2, microlitres: 0 },
      lost: { pieces: -2, microlitres: 0 },
      surplusPieces: 0,
    });
    for (const pieces of [0, 4]) {
      expect(arrivalOfLine(short, { pieces, turnedUp: true })).toEqual({
        refusal: expect.stringContaining('Give 1 to 3'),
      });
    }
    expect(arrivalOfLine(onItsWay, { pieces: 1, turnedUp: true })).toEqual({
      refusal: expect.stringContaining('Nothing of this is recorded as lost'),
    });
  });
});

describe('what arrived, in its containers', () => {
  it('fills the faulty ones first, so that a surplus counts as sound', () => {
    expect(intoContainers({ pieces: 5, microlitres: 0 }, [{ pieces: 4 }, { pieces: 3 }])).toEqual([
      { came: { pieces: 2, microlitres: 0 }, surplusPieces: 2 },
      { came: { pieces: 3, microlitres: 0 }, surplusPieces: 0 },
    ]);
  });

  it('is all there, with each container as full as it was said to be', () => {
    const containers = fc.array(fc.record({ pieces: fc.integer({ min: 1, max: 40 }) }), {
      minLength: 1,
      maxLength: 3,
    });
    fc.assert(
      fc.property(containers, fc.nat(60), fc.nat(10_000), (given, surplus, microlitres) => {
        const pieces = given.reduce((sum, one) => sum + one.pieces, 0);
        const sentPieces = Math.max(0, pieces - surplus);
        const arrived = { pieces: sentPieces, microlitres: sentPieces === 0 ? 0 : microlitres };
        const parts = intoContainers(arrived, given);
        expect(parts.map(({ came }) => came).reduce(plus, nothing)).toEqual(arrived);
        parts.forEach(({ came, surplusPieces }, index) => {
          expect(came.pieces + surplusPieces).toBe(given[index]?.pieces);
          expect(Math.min(came.pieces, came.microlitres, surplusPieces)).toBeGreaterThanOrEqual(0);
          if (came.pieces === 0) expect(came.microlitres).toBe(0);
        });
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BlendEdge, shareOf, sharesInto } from './blend-shares.js';

const edge = (
  parentLotId: string,
  lotId: string,
  parentMicrolitres: number,
  produced: number,
): BlendEdge => ({
  parentLotId,
  lotId,
  parentMicrolitres,
  producedMicrolitres: produced,
});

describe('the share of a lot in house blends', () => {
  it('is the whole of itself and nothing of what was not poured into it', () => {
    expect(sharesInto('a', [edge('b', 'c', 1, 2)])).toEqual(new Map([['a', 1]]));
  });

  it('is carried through blends of blends', () => {
    const edges = [edge('a', 'b', 2_500, 10_000), edge('b', 'c', 4_000, 8_000), edge('x', 'c', 4_000, 8_000)];
    expect(sharesInto('c', edges)).toEqual(
      new Map([
        ['c', 1],
        ['b', 0.5],
        ['x', 0.5],
        ['a', 0.125],
      ]),
    );
  });

  it('adds up where it came in by several ways', () => {
    const edges = [
      edge('a', 'left', 1_000, 2_000),
      edge('a', 'right', 500, 2_000),
      edge('left', 'both', 1_000, 2_500),
      edge('right', 'both', 1_000, 2_500),
      edge('a', 'both', 500, 2_500),
    ];
    expect(sharesInto('both', edges).get('a')).toBeCloseTo(0.4 * 0.5 + 0.4 * 0.25 + 0.2, 12);
  });

  it('adds up where the same lot was poured in twice', () => {
    expect(sharesInto('b', [edge('a', 'b', 300, 1_000), edge('a', 'b', 200, 1_000)]).get('a')).toBe(0.5);
  });

  it('costs steps, not ways, where every blend has two ways to the next', () => {
    const edges = Array.from({ length: 200 }, (_, depth) => [
      edge(`${depth}`, `${depth} left`, 1, 1),
      edge(`${depth}`, `${depth} right`, 1, 1),
      edge(`${depth} left`, `${depth + 1}`, 1, 2),
      edge(`${depth} right`, `${depth + 1}`, 1, 2),
    ]).flat();
    expect(sharesInto('200', edges).get('0')).toBe(1);
  });

  it('is what summing over every way through the blends gives', () => {
    /** Follows each way by itself: slow, and written without the rule's bookkeeping. */
    const sumOverWays = (to: string, from: string, edges: readonly BlendEdge[]): number =>
      to === from
        ? 1
        : edges
            .filter((pouring) => pouring.lotId === to)
            .reduce(
              (sum, pouring) =>
                sum +
                (pouring.parentMicrolitres / pouring.producedMicrolitres) *
                  sumOverWays(pouring.parentLotId, from, edges),
              0,
            );
    const graph = fc
      .array(fc.tuple(fc.nat(9), fc.nat(9), fc.integer({ min: 1, max: 5_000 })), { maxLength: 20 })
      .map((pourings) =>
        // A blend is only ever made of what was there before it.
        pourings
          .filter(([parent, lot]) => parent < lot)
          .map(([parent, lot, microlitres]) => edge(`${parent}`, `${lot}`, microlitres, 10_000)),
      );
    fc.assert(
      fc.property(graph, fc.nat(9), fc.nat(9), (edges, from, to) => {
        const share = sharesInto(`${to}`, edges).get(`${from}`) ?? 0;
        const expected = sumOverWays(`${to}`, `${from}`, edges);
        expect(Math.abs(share - expected)).toBeLessThanOrEqual(1e-9 * Math.max(1, expected));
      }),
    );
  });
});

describe('a share of an amount', () => {
  it('is told to three digits, also where it is less than a microlitre', () => {
    expect(shareOf(150, 1 / 3)).toBe(50);
    expect(shareOf(100, 0.123456)).toBe(12.3);
    expect(shareOf(50, 0.001234567)).toBe(0.0617);
  });
});

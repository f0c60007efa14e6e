import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ArrivedLine,
  answeredLines,
  type OrderedLine,
  orderedPieces,
  orderReceipt,
} from './order-receipt.js';

const umber: OrderedLine = { id: 'u', productId: 'umber', packs: 3, packContainers: 1, containerPieces: 1 };
const liner: OrderedLine = { id: 'l', productId: 'liner', packs: 2, packContainers: 1, containerPieces: 20 };
const came = (
  orderLineId: string | null,
  productId: string,
  pieces: number,
  deliveryLineId = 'd',
): ArrivedLine => ({
  ...{ deliveryId: 'delivery', deliveryLineId, orderLineId, productId, pieces },
});

describe('what came of an order', () => {
  it('counts each line up to what was ordered, and the rest as surplus', () => {
    const { lines, differences, ...sums } = orderReceipt(
      [umber, liner],
      [came('u', 'umber', 2), came('u', 'umber', 3, 'e'), came('u', 'umber', 1, 'f'), came('l', 'liner', 10)],
    );
    expect(lines).toEqual([
      { orderLineId: 'u', orderedPieces: 3, receivedPieces: 6, outstandingPieces: 0, surplusPieces: 3 },
      { orderLineId: 'l', orderedPieces: 40, receivedPieces: 10, outstandingPieces: 30, surplusPieces: 0 },
    ]);
    expect(sums).toEqual({ receivedPieces: 13, outstandingPieces: 30 });
    // Two of the three that came second, and all that came third.
    expect(differences.map(({ kind, deliveryLineId, pieces }) => [kind, deliveryLineId, pieces])).toEqual([
      ['more than ordered', 'e', 2],
      ['more than ordered', 'f', 1],
    ]);
  });

  it('says another product, and what was not ordered, and counts neither', () => {
    const { differences, receivedPieces } = orderReceipt(
      [umber],
      [came('u', 'liner', 20), came(null, 'ocker', 1), came('theirs', 'umber', 2)],
    );
    expect(differences.map(({ kind, orderLineId }) => [kind, orderLineId])).toEqual([
      ['another product', 'u'],
      ['not ordered', null],
      ['not ordered', null],
    ]);
    expect(receivedPieces).toBe(0);
  });

  it('loses no piece that arrived, however it came', () => {
    const anything = fc.record({
      line: fc.constantFrom('u', 'l', null, 'unknown'),
      product: fc.constantFrom('umber', 'liner', 'ocker'),
      pieces: fc.integer({ min: 1, max: 50 }),
    });
    fc.assert(
      fc.property(fc.array(anything, { maxLength: 20 }), (all) => {
        const arrived = all.map(({ line, product, pieces }, index) =>
          came(line, product, pieces, String(index)),
        );
        const { receivedPieces, outstandingPieces, differences } = orderReceipt([umber, liner], arrived);
        const told = differences.reduce((sum, { pieces }) => sum + pieces, 0);
        expect(receivedPieces + told).toBe(arrived.reduce((sum, { pieces }) => sum + pieces, 0));
        expect(receivedPieces + outstandingPieces).toBe(orderedPieces(umber) + orderedPieces(liner));
      }),
    );
  });
});

describe('lines that nobody named', () => {
  const receipts = orderReceipt([umber, liner], []).lines;
  const arriving = (productId: string, pieces: number, named?: string | null) => ({
    productId,
    pieces,
    named,
  });

  it('answer the line of the same product', () => {
    expect(answeredLines([umber, liner], receipts, [arriving('liner', 40), arriving('umber', 1)])).toEqual([
      'l',
      'u',
    ]);
  });

  it('answer the one that still waits where two are of one product', () => {
    const second = { ...umber, id: 'u2', packs: 5 };
    const lines = [umber, second];
    const waiting = orderReceipt(lines, [came('u', 'umber', 3)]).lines;
    expect(answeredLines(lines, waiting, [arriving('umber', 1)])).toEqual(['u2']);
    // What is said counts first, and what comes fills one after the other.
    const none = orderReceipt(lines, []).lines;
    const all = [arriving('umber', 2), arriving('umber', 1), arriving('umber', 3, 'u')];
    expect(answeredLines(lines, none, all)).toEqual(['u2', 'u2', 'u']);
    expect(answeredLines(lines, none, [arriving('umber', 3), arriving('umber', 1)])).toEqual(['u', 'u2']);
  });

  it('stay as they were said', () => {
    const all = [arriving('umber', 1, null), arriving('liner', 1, 'theirs'), arriving('ocker', 1)];
    expect(answeredLines([umber, liner], receipts, all)).toEqual([null, 'theirs', null]);
  });

  it('came in place of what was ordered when nothing else came', () => {
    expect(answeredLines([umber, liner], receipts, [arriving('ocker', 3)])).toEqual(['u']);
    expect(answeredLines([], [], [arriving('ocker', 3)])).toEqual([null]);
    expect(answeredLines([umber], receipts, [arriving('ocker', 3, null)])).toEqual([null]);
  });
});

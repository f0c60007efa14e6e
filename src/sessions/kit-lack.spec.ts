import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type KitNeed, kitLack, type TrayItem } from './kit-lack.js';

function ofProduct(productId: string, quantityPieces: number): KitNeed {
  return { kind: 'product', productId, label: `product ${productId}`, quantityPieces };
}

function ofPool(poolId: string, quantityPieces: number): KitNeed {
  return { kind: 'configuration pool', poolId, label: `pool ${poolId}`, quantityPieces };
}

function onTray(productId: string, quantityPieces: number, poolId: string | null = null): TrayItem {
  return { productId, poolId, label: `product ${productId}`, quantityPieces };
}

describe('what a tray lacks', () => {
  it('is nothing when the kit list is met exactly', () => {
    const kit = [ofProduct('brown', 1), ofPool('7 liner', 2)];
    expect(kitLack(kit, [onTray('x', 2, '7 liner'), onTray('brown', 1)])).toEqual([]);
  });

  it('is named by label and the quantity still needed', () => {
    expect(kitLack([ofProduct('brown', 3), ofPool('7 liner', 2)], [onTray('brown', 1)])).toEqual([
      { kind: 'product', productId: 'brown', label: 'product brown', quantityPieces: 2 },
      { kind: 'configuration pool', poolId: '7 liner', label: 'pool 7 liner', quantityPieces: 2 },
    ]);
  });

  it('is served by different makers of one pool together', () => {
    const tray = [onTray('maker one', 1, '7 liner'), onTray('maker two', 1, '7 liner')];
    expect(kitLack([ofPool('7 liner', 3)], tray)).toEqual([ofPool('7 liner', 1)]);
  });

  it('does not count one piece for two lines', () => {
    const kit = [ofPool('7 liner', 1), ofProduct('x', 1)];
    expect(kitLack(kit, [onTray('x', 1, '7 liner')])).toEqual([ofPool('7 liner', 1)]);
  });

  it('serves the named product first, so that a pool line is not served at its cost', () => {
    const kit = [ofPool('7 liner', 1), ofProduct('x', 1)];
    const tray = [onTray('x', 1, '7 liner'), onTray('y', 1, '7 liner')];
    expect(kitLack(kit, tray)).toEqual([]);
  });

  it('adds up lines that name the same product twice', () => {
    expect(kitLack([ofProduct('x', 1), ofProduct('x', 1)], [onTray('x', 1)])).toEqual([ofProduct('x', 1)]);
    const line = ofProduct('x', 1);
    expect(kitLack([line, line, line], [onTray('x', 1)])).toEqual([line, line]);
  });

  it('is not met by a product of another pool', () => {
    expect(kitLack([ofPool('7 liner', 1)], [onTray('x', 1, '9 magnum')])).toEqual([ofPool('7 liner', 1)]);
  });

  it('is not met by a product without a pool', () => {
    expect(kitLack([ofPool('7 liner', 1)], [onTray('x', 1)])).toEqual([ofPool('7 liner', 1)]);
  });

  it.each([-1, 0.5, Number.NaN])('refuses a quantity of %d', (quantityPieces) => {
    expect(() => kitLack([ofProduct('x', quantityPieces)], [])).toThrow(/whole pieces/);
    expect(() => kitLack([], [onTray('x', quantityPieces)])).toThrow(/whole pieces/);
  });

  it('is as little as can be, and nothing once it is fetched', () => {
    const quantity = fc.integer({ min: 0, max: 4 });
    const productId = fc.constantFrom('a', 'b', 'c', 'd');
    const poolOf: Record<string, string | null> = { a: 'p', b: 'p', c: 'q', d: null };
    const kitNeed = fc.oneof(
      fc.tuple(productId, quantity).map(([id, pieces]) => ofProduct(id, pieces)),
      fc.tuple(fc.constantFrom('p', 'q'), quantity).map(([id, pieces]) => ofPool(id, pieces)),
    );
    const trayItem = fc
      .tuple(productId, quantity)
      .map(([id, pieces]) => onTray(id, pieces, poolOf[id] ?? null));
    const count = (items: { quantityPieces: number }[]) =>
      items.reduce((sum, item) => sum + item.quantityPieces, 0);
    fc.assert(
      fc.property(fc.array(kitNeed, { maxLength: 6 }), fc.array(trayItem, { maxLength: 6 }), (kit, tray) => {
        const lacking = kitLack(kit, tray);
        expect(count(kit) - count(lacking)).toBe(mostServed(kit, tray));
        const fetched = lacking.map((need) =>
          need.kind === 'product'
            ? onTray(need.productId, need.quantityPieces, poolOf[need.productId] ?? null)
            : onTray(need.poolId === 'p' ? 'a' : 'c', need.quantityPieces, need.poolId),
        );
        expect(kitLack(kit, [...tray, ...fetched])).toEqual([]);
      }),
    );
  });
});

/** How many pieces of a kit list a tray can serve at best: a largest matching of single pieces, by augmenting paths. */
function mostServed(kit: readonly KitNeed[], tray: readonly TrayItem[]): number {
  const singly = <Item extends { quantityPieces: number }>(items: readonly Item[]): Item[] =>
    items.flatMap((item) => Array.from({ length: item.quantityPieces }, () => item));
  const needs = singly(kit);
  const pieces = singly(tray);
  const servedBy = new Map<number, number>();
  const fits = (need: KitNeed, piece: TrayItem) =>
    need.kind === 'product' ? need.productId === piece.productId : need.poolId === piece.poolId;
  const serve = (needed: number, tried: Set<number>): boolean =>
    pieces.some((piece, index) => {
      const need = needs[needed];
      if (!need || tried.has(index) || !fits(need, piece)) return false;
      tried.add(index);
      const other = servedBy.get(index);
      if (other !== undefined && !serve(other, tried)) return false;
      servedBy.set(index, needed);
      return true;
    });
  return needs.filter((_, needed) => serve(needed, new Set())).length;
}

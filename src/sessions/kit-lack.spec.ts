import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type KitItem, kitLack, type TrayItem } from './kit-lack.js';

function ofProduct(productId: string, quantityPieces: number): KitItem {
  return { kind: 'product', productId, label: `product ${productId}`, quantityPieces };
}

function ofPool(poolId: string, quantityPieces: number): KitItem {
  return { kind: 'configuration pool', poolId, label: `pool ${poolId}`, quantityPieces };
}

function onTray(productId: string, quantityPieces: number, poolId: string | null = null): TrayItem {
  return { productId, poolId, label: `product ${productId}`, quantityPieces };
}

describe('what a tray lacks', () => {
  it('is nothing when the kit list is met exactly', () => {
    const kit = [ofProduct('brown', 1), ofPool('7 liner', 2)];
    expect(kitLack(kit, [onTray('x', 2, '7 liner'), onTray('brown', 1)])).toEqual({
      lacking: [],
      notOnKitList: [],
    });
  });

  it('is named by label and the quantity still needed', () => {
    expect(kitLack([ofProduct('brown', 3), ofPool('7 liner', 2)], [onTray('brown', 1)]).lacking).toEqual([
      { kind: 'product', productId: 'brown', label: 'product brown', quantityPieces: 2 },
      { kind: 'configuration pool', poolId: '7 liner', label: 'pool 7 liner', quantityPieces: 2 },
    ]);
  });

  it('is served by different makers of one pool together', () => {
    const tray = [onTray('maker one', 1, '7 liner'), onTray('maker two', 1, '7 liner')];
    expect(kitLack([ofPool('7 liner', 3)], tray).lacking).toEqual([ofPool('7 liner', 1)]);
  });

  it('does not count one piece for two lines', () => {
    const kit = [ofPool('7 liner', 1), ofProduct('x', 1)];
    expect(kitLack(kit, [onTray('x', 1, '7 liner')]).lacking).toEqual([ofPool('7 liner', 1)]);
  });

  it('serves the named product first, so that a pool line is not served at its cost', () => {
    const kit = [ofPool('7 liner', 1), ofProduct('x', 1)];
    const tray = [onTray('x', 1, '7 liner'), onTray('y', 1, '7 liner')];
    expect(kitLack(kit, tray)).toEqual({ lacking: [], notOnKitList: [] });
  });

  it('adds up lines that name the same product twice', () => {
    expect(kitLack([ofProduct('x', 1), ofProduct('x', 1)], [onTray('x', 1)]).lacking).toEqual([
      ofProduct('x', 1),
    ]);
    const line = ofProduct('x', 1);
    expect(kitLack([line, line, line], [onTray('x', 1)]).lacking).toEqual([line, line]);
  });

  it('is not met by a product of another pool', () => {
    expect(kitLack([ofPool('7 liner', 1)], [onTray('x', 1, '9 magnum')])).toEqual({
      lacking: [ofPool('7 liner', 1)],
      notOnKitList: [onTray('x', 1, '9 magnum')],
    });
  });

  it('is not met by a product without a pool', () => {
    expect(kitLack([ofPool('7 liner', 1)], [onTray('x', 1)])).toEqual({
      lacking: [ofPool('7 liner', 1)],
      notOnKitList: [onTray('x', 1)],
    });
  });

  it('shows what is on the tray beyond the kit list', () => {
    expect(kitLack([ofProduct('x', 1)], [onTray('x', 3), onTray('spare', 1)]).notOnKitList).toEqual([
      onTray('x', 2),
      onTray('spare', 1),
    ]);
  });

  it.each([-1, 0.5, Number.NaN])('refuses a quantity of %d', (quantityPieces) => {
    expect(() => kitLack([ofProduct('x', quantityPieces)], [])).toThrow(/whole pieces/);
    expect(() => kitLack([], [onTray('x', quantityPieces)])).toThrow(/whole pieces/);
  });

  it('is complete once the lacking pieces are added, and loses no piece', () => {
    const quantity = fc.integer({ min: 0, max: 4 });
    const productId = fc.constantFrom('a', 'b', 'c', 'd');
    const poolOf: Record<string, string | null> = { a: 'p', b: 'p', c: 'q', d: null };
    const kitItem = fc.oneof(
      fc.tuple(productId, quantity).map(([id, pieces]) => ofProduct(id, pieces)),
      fc.tuple(fc.constantFrom('p', 'q'), quantity).map(([id, pieces]) => ofPool(id, pieces)),
    );
    const trayItem = fc
      .tuple(productId, quantity)
      .map(([id, pieces]) => onTray(id, pieces, poolOf[id] ?? null));
    const count = (items: { quantityPieces: number }[]) =>
      items.reduce((sum, item) => sum + item.quantityPieces, 0);
    fc.assert(
      fc.property(fc.array(kitItem, { maxLength: 6 }), fc.array(trayItem, { maxLength: 6 }), (kit, tray) => {
        const { lacking, notOnKitList } = kitLack(kit, tray);
        expect(count(kit) - count(lacking)).toBe(count(tray) - count(notOnKitList));
        const fetched = lacking.map((item) =>
          item.kind === 'product'
            ? onTray(item.productId, item.quantityPieces, poolOf[item.productId] ?? null)
            : onTray(item.poolId === 'p' ? 'a' : 'c', item.quantityPieces, item.poolId),
        );
        expect(kitLack(kit, [...tray, ...fetched]).lacking).toEqual([]);
        // Nothing extra could have served a line that lacks.
        for (const extra of notOnKitList) {
          for (const item of lacking) {
            const could =
              item.kind === 'product' ? item.productId === extra.productId : item.poolId === extra.poolId;
            expect(could).toBe(false);
          }
        }
      }),
    );
  });
});

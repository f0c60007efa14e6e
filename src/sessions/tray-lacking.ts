import { type KitNeed, kitLack } from './kit-lack.js';

/** A line of a kit list; exactly one of product and configuration is named. */
export interface CalledKitItem {
  productId: string | null;
  /** Key of a configuration pool. */
  configuration: string | null;
  quantity: number;
  /** How a person calls it. */
  label: string;
}

export interface KitGap {
  productId: string | null;
  configuration: string | null;
  label: string;
  quantityPieces: number;
}

/**
 * What a kit list asks for and a tray lacks, in the order of the list.
 *
 * @param lines that lie on the tray
 * @param pools products that stand for each other, with the keys of their configurations
 */
export function trayLacking(
  kitItems: readonly CalledKitItem[],
  lines: readonly { productId: string; label: string; pieces: number }[],
  pools: readonly { productIds: readonly string[]; poolKeys: readonly string[] }[],
): KitGap[] {
  const needs = kitItems.map(({ productId, configuration, label, quantity: quantityPieces }): KitNeed => {
    if (productId !== null) return { kind: 'product', productId, label, quantityPieces };
    // Of a configuration that no cartridge has any more no pool is known, and nothing serves it: -1.
    const pool = pools.findIndex(({ poolKeys }) => poolKeys.includes(configuration ?? ''));
    return { kind: 'configuration pool', poolId: String(pool), label, quantityPieces };
  });
  const items = lines.map(({ productId, label, pieces }) => {
    const pool = pools.findIndex(({ productIds }) => productIds.includes(productId));
    return {
      productId,
      poolId: pool === -1 ? null : String(pool),
      label,
      // A bottle on the tray serves its line of the kit list, though no piece of it is reserved.
      quantityPieces: Math.max(1, pieces),
    };
  });
  return kitLack(needs, items).map((gap) => ({
    productId: gap.kind === 'product' ? gap.productId : null,
    configuration: gap.kind === 'product' ? null : gap.label,
    label: gap.label,
    quantityPieces: gap.quantityPieces,
  }));
}

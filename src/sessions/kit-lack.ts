/** One line of a kit list: so many pieces of a product, or of whatever stands in a configuration pool. */
export type KitItem =
  | { kind: 'product'; productId: string; label: string; quantityPieces: number }
  | { kind: 'configuration pool'; poolId: string; label: string; quantityPieces: number };

/** One line on the tray: so many pieces of a product, whose pool is null when it stands in none. */
export interface TrayItem {
  productId: string;
  poolId: string | null;
  label: string;
  quantityPieces: number;
}

export interface KitLack {
  /** What the tray still needs, in the order of the kit list. */
  lacking: KitItem[];
  /** What is on the tray beyond the kit list, in the order of the tray. */
  notOnKitList: TrayItem[];
}

/**
 * Compares a tray with a kit list. Every piece on the tray counts once. Lines that name a product are served
 * before lines that name a pool, for a piece of the right product can serve either, and a pool line is served by
 * any other piece of its pool. Bottles and tubes count as one piece each.
 *
 * @returns what is lacking and what is extra, with the quantities that are; both empty when the tray is complete
 * @throws RangeError when a quantity is not a whole number of pieces, 0 or more
 */
export function kitLack(kitItems: readonly KitItem[], trayItems: readonly TrayItem[]): KitLack {
  for (const item of [...kitItems, ...trayItems]) refuseBrokenQuantity(item);
  const left = trayItems.map((item) => ({ item, quantityPieces: item.quantityPieces }));
  const lines = kitItems.map((item) => ({ item, neededPieces: item.quantityPieces }));

  for (const kind of ['product', 'configuration pool']) {
    for (const line of lines.filter(({ item }) => item.kind === kind)) {
      for (const onTray of left) {
        if (!serves(onTray.item, line.item)) continue;
        const takenPieces = Math.min(line.neededPieces, onTray.quantityPieces);
        onTray.quantityPieces -= takenPieces;
        line.neededPieces -= takenPieces;
      }
    }
  }

  return {
    lacking: lines
      .map(({ item, neededPieces }) => ({ ...item, quantityPieces: neededPieces }))
      .filter((item) => item.quantityPieces > 0),
    notOnKitList: left
      .map(({ item, quantityPieces }) => ({ ...item, quantityPieces }))
      .filter((item) => item.quantityPieces > 0),
  };
}

function serves(trayItem: TrayItem, kitItem: KitItem): boolean {
  return kitItem.kind === 'product'
    ? trayItem.productId === kitItem.productId
    : trayItem.poolId === kitItem.poolId;
}

function refuseBrokenQuantity(item: KitItem | TrayItem): void {
  if (Number.isInteger(item.quantityPieces) && item.quantityPieces >= 0) return;
  throw new RangeError(
    `"${item.label}" has a quantity of ${item.quantityPieces}. Allowed are whole pieces, 0 or more. Count again.`,
  );
}

/** What a line of a kit list needs: so many pieces of a product, or of whatever stands in a configuration pool. */
export type KitNeed =
  | { kind: 'product'; productId: string; label: string; quantityPieces: number }
  | { kind: 'configuration pool'; poolId: string; label: string; quantityPieces: number };

/** One line on the tray: so many pieces of a product, whose pool is null when it stands in none. */
export interface TrayItem {
  productId: string;
  poolId: string | null;
  label: string;
  quantityPieces: number;
}

/**
 * Compares a tray with a kit list. Every piece on the tray counts once. Lines that name a product are served
 * before lines that name a pool, for a piece of the right product can serve either, and a pool line is served by
 * any other piece of its pool. Bottles and tubes count as one piece each.
 *
 * @returns what the tray still needs and how many, in the order of the kit list; empty when it is complete
 * @throws RangeError when a quantity is not a whole number of pieces, 0 or more
 */
export function kitLack(needs: readonly KitNeed[], trayItems: readonly TrayItem[]): KitNeed[] {
  for (const item of [...needs, ...trayItems]) refuseBrokenQuantity(item);
  const left = trayItems.map((item) => ({ item, quantityPieces: item.quantityPieces }));
  const lines = needs.map((need) => ({ need, neededPieces: need.quantityPieces }));

  for (const kind of ['product', 'configuration pool']) {
    for (const line of lines.filter(({ need }) => need.kind === kind)) {
      for (const onTray of left) {
        if (!serves(onTray.item, line.need)) continue;
        const takenPieces = Math.min(line.neededPieces, onTray.quantityPieces);
        onTray.quantityPieces -= takenPieces;
        line.neededPieces -= takenPieces;
      }
    }
  }

  return lines
    .map(({ need, neededPieces }) => ({ ...need, quantityPieces: neededPieces }))
    .filter((need) => need.quantityPieces > 0);
}

function serves(trayItem: TrayItem, need: KitNeed): boolean {
  return need.kind === 'product' ? trayItem.productId === need.productId : trayItem.poolId === need.poolId;
}

function refuseBrokenQuantity(item: KitNeed | TrayItem): void {
  if (Number.isInteger(item.quantityPieces) && item.quantityPieces >= 0) return;
  throw new RangeError(
    `"${item.label}" has a quantity of ${item.quantityPieces}. Allowed are whole pieces, 0 or more. Count again.`,
  );
}

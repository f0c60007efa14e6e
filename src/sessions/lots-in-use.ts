import { type BlendEdge, shareOf, sharesInto } from './blend-shares.js';

/** How a lot is called. */
interface NamedLot {
  makerName: string;
  productName: string;
  shade: string | null;
  lotCode: string | null;
  useBy: string | null;
}

/** What a parent lot gave to a blend, with the facts of the parent. */
export interface Pouring extends BlendEdge, NamedLot {}

/** A use of a lot: what of it came from where. */
export interface UsedLot extends NamedLot {
  lotId: string;
  microlitres: number;
}

/** A lot that was in a use. */
export interface LotInUse extends NamedLot {
  lotId: string;
  /** False: it was in it through a house blend. */
  direct: boolean;
  /** What of the use is this lot's, an estimate; null: pieces, or an amount not known. */
  shareMicrolitres: number | null;
}

/**
 * Tells the lots that were in a use: the one taken in hand, then those blended into it, the greatest share first. What
 * is behind a lot is worked out once, however many uses there are of it.
 */
export function lotsInUse(pourings: readonly Pouring[]): (use: UsedLot) => LotInUse[] {
  const parents = new Map(pourings.map((pouring) => [pouring.parentLotId, pouring]));
  const blends = new Set(pourings.map((pouring) => pouring.lotId));
  const known = new Map<string, { parent: Pouring; share: number }[]>();
  const behind = (lotId: string) => {
    const found = [...sharesInto(lotId, pourings)]
      .flatMap(([parentLotId, share]) => {
        const parent = parentLotId === lotId ? undefined : parents.get(parentLotId);
        return parent ? [{ parent, share }] : [];
      })
      .sort((a, b) => b.share - a.share || (a.parent.parentLotId < b.parent.parentLotId ? -1 : 1));
    known.set(lotId, found);
    return found;
  };
  return (use) => {
    const { lotId, makerName, productName, shade, lotCode, useBy, microlitres } = use;
    const shareMicrolitres = microlitres > 0 ? microlitres : null;
    const itself = { lotId, direct: true, makerName, productName, shade, lotCode, useBy, shareMicrolitres };
    if (!blends.has(lotId)) return [itself];
    const blendedIn = (known.get(lotId) ?? behind(lotId)).map(({ parent, share }) => ({
      lotId: parent.parentLotId,
      direct: false,
      makerName: parent.makerName,
      productName: parent.productName,
      shade: parent.shade,
      lotCode: parent.lotCode,
      useBy: parent.useBy,
      shareMicrolitres: microlitres > 0 ? shareOf(microlitres, share) : null,
    }));
    return [itself, ...blendedIn];
  };
}

import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import { type BlendEdge, shareOf, sharesInto } from './blend-shares.js';
import type { TracedLotView } from './trace.views.js';

/** What a parent lot gave to a blend, with the facts of the parent. */
export interface Pouring extends BlendEdge {
  makerName: string;
  productName: string;
  shade: string | null;
  lotCode: string | null;
  useBy: string | null;
}

/** A use of a lot: what of it came from where. */
export interface UsedLot {
  lotId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  lotCode: string | null;
  useBy: string | null;
  microlitres: number;
}

/** What house blends were made of, and what was made of lots, at any depth, in one question each. */
@Injectable()
export class BlendAncestry {
  constructor(private readonly database: Database) {}

  /** Every pouring from the lots and from all that was made of them. */
  pouringsFrom(studioId: string, lotIds: readonly string[]): Promise<Pouring[]> {
    return this.pourings(studioId, lotIds, { from: 'parent_lot_id', to: 'lot_id' });
  }

  /** Every pouring into the lots and into all that they were made of. */
  pouringsInto(studioId: string, lotIds: readonly string[]): Promise<Pouring[]> {
    return this.pourings(studioId, lotIds, { from: 'lot_id', to: 'parent_lot_id' });
  }

  private async pourings(
    studioId: string,
    lotIds: readonly string[],
    { from, to }: { from: string; to: string },
  ): Promise<Pouring[]> {
    const ids = [...new Set(lotIds)];
    if (ids.length === 0) return [];
    return this.database.read<Pouring>(
      `WITH RECURSIVE reached (lot_id) AS (
         SELECT id FROM lot WHERE studio_id = $1 AND id IN (${ids.map((_, index) => `$${index + 2}`).join(', ')})
         UNION
         SELECT blend_parent.${to} FROM reached JOIN blend_parent
           ON blend_parent.studio_id = $1 AND blend_parent.${from} = reached.lot_id)
       SELECT blend_parent.lot_id AS "lotId", blend_parent.parent_lot_id AS "parentLotId",
         blend_parent.microlitres AS "parentMicrolitres",
         (SELECT sum(blend.microlitres) FROM blend
          WHERE blend.studio_id = $1 AND blend.lot_id = blend_parent.lot_id) AS "producedMicrolitres",
         maker.name AS "makerName", product.name AS "productName", product.shade, lot.code AS "lotCode",
         lot.use_by AS "useBy"
       FROM reached
         JOIN blend_parent ON blend_parent.studio_id = $1 AND blend_parent.${from} = reached.lot_id
         JOIN lot ON lot.studio_id = $1 AND lot.id = blend_parent.parent_lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id`,
      [studioId, ...ids],
    );
  }
}

/**
 * Tells the lots that were in a use: the one taken in hand, then those blended into it, the greatest share first. What
 * is behind a lot is worked out once, however many uses there are of it.
 */
export function lotsBehind(pourings: readonly Pouring[]): (use: UsedLot) => TracedLotView[] {
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

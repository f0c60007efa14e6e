import { Injectable } from '@nestjs/common';
import { Database, placeholders, type Read } from '../platform/database/database.js';
import type { Pouring } from './lots-in-use.js';

/** What house blends were made of, and what was made of lots, at any depth, in one question each. */
@Injectable()
export class BlendAncestry {
  constructor(private readonly database: Database) {}

  /** Every pouring from the lots and from all that was made of them. */
  pouringsFrom(studioId: string, lotIds: readonly string[]): Promise<Pouring[]> {
    return this.pourings(studioId, lotIds, { from: 'parent_lot_id', to: 'lot_id' });
  }

  /** Every pouring into the lots and into all that they were made of. @param read in a transaction, its own */
  pouringsInto(studioId: string, lotIds: readonly string[], read?: Read): Promise<Pouring[]> {
    return this.pourings(studioId, lotIds, { from: 'lot_id', to: 'parent_lot_id' }, read);
  }

  private async pourings(
    studioId: string,
    lotIds: readonly string[],
    { from, to }: { from: string; to: string },
    read: Read = this.database.read,
  ): Promise<Pouring[]> {
    const ids = [...new Set(lotIds)];
    if (ids.length === 0) return [];
    return read<Pouring>(
      `WITH RECURSIVE reached (lot_id) AS (
         SELECT id FROM lot WHERE studio_id = $1 AND id IN (${placeholders(ids)})
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

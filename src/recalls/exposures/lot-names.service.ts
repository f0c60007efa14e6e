import { Injectable } from '@nestjs/common';
import { placeholders, type Read } from '../../platform/database/database.js';

/** How a lot is called today: a corrected code is the one that counts. */
export interface LotName {
  lotId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  lotCode: string | null;
  useBy: string | null;
}

const lotsPerRead = 500;

/** What lots are called. */
@Injectable()
export class LotNames {
  /** Adds those that are not among the known ones yet. */
  async learn(
    read: Read,
    studioId: string,
    lotIds: readonly string[],
    known: Map<string, LotName>,
  ): Promise<void> {
    const unnamed = [...new Set(lotIds)].filter((id) => !known.has(id));
    for (let from = 0; from < unnamed.length; from += lotsPerRead) {
      const part = unnamed.slice(from, from + lotsPerRead);
      const rows = await read<LotName>(
        `SELECT lot.id AS "lotId", maker.name AS "makerName", product.name AS "productName", product.shade,
           lot.code AS "lotCode", lot.use_by AS "useBy"
         FROM lot
           JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
           JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
         WHERE lot.studio_id = $1 AND lot.id IN (${placeholders(part)})`,
        [studioId, ...part],
      );
      for (const name of rows) known.set(name.lotId, name);
    }
  }
}

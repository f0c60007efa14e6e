import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { SisterLotView } from './trace.views.js';

/** So many lots of one product and code are named. */
const mostSisterLots = 50;

/**
 * Lots of one product that bear the same code: two batches, or one whose date was misread. A recall that names the code
 * means them all, so whoever looks at one is told of the others.
 */
@Injectable()
export class SisterLots {
  constructor(private readonly database: Database) {}

  /** Of a lot: the others of its product that have any of its codes, printed or superseded. */
  async of(studioId: string, lotId: string): Promise<SisterLotView[]> {
    return this.database.read<SisterLotView>(
      `SELECT DISTINCT sister.id AS "lotId", sister.use_by AS "useBy"
       FROM lot
         JOIN lot_code ON lot_code.studio_id = lot.studio_id AND lot_code.lot_id = lot.id
         JOIN lot_code AS same ON same.studio_id = lot.studio_id AND same.code = lot_code.code
         JOIN lot AS sister ON sister.studio_id = lot.studio_id AND sister.id = same.lot_id
       WHERE lot.studio_id = $1 AND lot.id = $2 AND sister.id <> lot.id AND sister.product_id = lot.product_id
       ORDER BY sister.id LIMIT ${mostSisterLots}`,
      [studioId, lotId],
    );
  }
}

import { Injectable } from '@nestjs/common';
import { Database } from '../../platform/database/database.js';
import type { LotView } from '../lot-list.views.js';

const maximumTransfersOfLot = 200;

/** Where goods of a lot came from and went to: ids of the transfer, of the other studio and of the lot there, no more. */
@Injectable()
export class LotTransfers {
  constructor(private readonly database: Database) {}

  async of(studioId: string, lotId: string): Promise<Pick<LotView, 'cameFrom' | 'wentTo'>> {
    const key = [studioId, lotId];
    return {
      cameFrom: await this.database.read(
        `SELECT line.transfer_id AS "transferId", line.id AS "lineId", line.studio_id AS "studioId",
           line.lot_id AS "lotId", line.container_id AS "fromContainerId",
           goods.container_id AS "intoContainerId", goods.pieces, goods.microlitres,
           outcome.occurred_at AS "occurredAt"
         FROM transfer_goods AS goods
           JOIN transfer_outcome AS outcome
             ON outcome.studio_id = goods.studio_id AND outcome.id = goods.outcome_id
           JOIN transfer_line AS line ON line.studio_id = outcome.sender_id AND line.id = outcome.line_id
         WHERE goods.studio_id = $1 AND goods.lot_id = $2 AND outcome.kind <> 'withdrawn'
         ORDER BY outcome.occurred_at DESC, goods.id DESC LIMIT ${maximumTransfersOfLot}`,
        key,
      ),
      wentTo: await this.database.read(
        `SELECT line.transfer_id AS "transferId", line.id AS "lineId", line.receiver_id AS "studioId",
           goods.lot_id AS "lotId", line.container_id AS "fromContainerId",
           goods.container_id AS "intoContainerId",
           CASE WHEN outcome.id IS NULL THEN line.pieces ELSE coalesce(goods.pieces, 0) END AS pieces,
           CASE WHEN outcome.id IS NULL THEN line.microlitres ELSE coalesce(goods.microlitres, 0) END AS microlitres,
           transfer.occurred_at AS "occurredAt", coalesce(outcome.kind, 'in transit') AS state
         FROM transfer_line AS line
           JOIN transfer ON transfer.studio_id = line.studio_id AND transfer.id = line.transfer_id
           LEFT JOIN transfer_outcome AS outcome
             ON outcome.sender_id = line.studio_id AND outcome.line_id = line.id
           LEFT JOIN transfer_goods AS goods
             ON goods.studio_id = outcome.studio_id AND goods.outcome_id = outcome.id
         WHERE line.studio_id = $1 AND line.lot_id = $2
         ORDER BY transfer.occurred_at DESC, line.id DESC, goods.id DESC LIMIT ${maximumTransfersOfLot}`,
        key,
      ),
    };
  }
}

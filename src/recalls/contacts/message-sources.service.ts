import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database, placeholders } from '../../platform/database/database.js';
import { notFound } from '../../platform/problem.js';
import type { Certainty } from '../exposures/exposure-certainty.js';
import type { MessageLot, MessageRecall } from '../messages/message-facts.js';
import { recallLots } from '../recall-lots.query.js';

const mostPhotos = 3;

type LotRow = Omit<MessageLot, 'certainty' | 'gtins' | 'otherCodes' | 'useByMonthOnly'> & {
  useByPrecision: string;
  chainId: string;
  productId: string;
};

/** What messages are made of, besides what concerns their recipient. */
@Injectable()
export class MessageSources {
  constructor(private readonly database: Database) {}

  /** By the scope that counts. @throws Problem not-found */
  async recall({ studioId }: Actor, recallId: string): Promise<MessageRecall> {
    const [recall] = await this.database.read<MessageRecall>(
      `SELECT studio.name AS "studioName", studio.contact_point AS "contactPoint", recall_scope.issuer,
         recall_scope.reference, recall_scope.issued_on AS "issuedOn", recall_scope.risk, recall_scope.remedy
       FROM recall_scope JOIN studio ON studio.id = recall_scope.studio_id
       WHERE recall_scope.studio_id = $1 AND recall_scope.recall_id = $2
       ORDER BY recall_scope.number DESC LIMIT 1`,
      [studioId, recallId],
    );
    if (!recall) throw notFound('recall', recallId);
    return recall;
  }

  /** Lots of the recall that are affected or undecided. */
  async lotsOfRecall(studioId: string, recallId: string): Promise<Map<string, Certainty>> {
    const rows = await this.database.read<{ lotId: string; standing: string }>(
      `WITH RECURSIVE ${recallLots}
       SELECT lot_id AS "lotId", standing FROM recall_lots WHERE standing <> 'not affected' ORDER BY lot_id`,
      [studioId, recallId],
    );
    return new Map(
      rows.map(({ lotId, standing }) => [lotId, standing === 'affected' ? 'certain' : 'possible']),
    );
  }

  /** Everything that tells lots apart, in the order of their products and codes. */
  async lots(studioId: string, certainties: ReadonlyMap<string, Certainty>): Promise<MessageLot[]> {
    const ids = [...certainties.keys()];
    if (ids.length === 0) return [];
    const { read } = this.database;
    const rows = await read<LotRow>(
      `SELECT lot.id AS "lotId", maker.name AS "makerName", product.name AS "productName", product.shade,
         product.volume_microlitres AS "volumeMicrolitres", lot.code, lot.use_by AS "useBy",
         lot.use_by_precision AS "useByPrecision", lot.manufactured_on AS "manufacturedOn",
         lot.chain_id AS "chainId", lot.product_id AS "productId"
       FROM lot JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE lot.studio_id = $1 AND lot.id IN (${placeholders(ids)})
       ORDER BY maker.name, product.name, product.shade, lot.code, lot.id`,
      [studioId, ...ids],
    );
    const codes = await read<{ lotId: string; code: string }>(
      `SELECT lot_id AS "lotId", code FROM lot_code WHERE studio_id = $1 AND lot_id IN (${placeholders(ids)})
       ORDER BY recorded_at, id`,
      [studioId, ...ids],
    );
    const gtins = await read<{ lotId: string; gtin: string }>(
      `SELECT lot.id AS "lotId", product_gtin.gtin FROM lot JOIN product_gtin
         ON product_gtin.chain_id = lot.chain_id AND product_gtin.product_id = lot.product_id
       WHERE lot.studio_id = $1 AND lot.id IN (${placeholders(ids)}) ORDER BY product_gtin.gtin`,
      [studioId, ...ids],
    );
    return rows.map(({ useByPrecision, chainId: _, productId: __, ...lot }) => ({
      ...lot,
      useByMonthOnly: useByPrecision === 'month',
      otherCodes: [
        ...new Set(
          codes.flatMap(({ lotId, code }) => (lotId === lot.lotId && code !== lot.code ? [code] : [])),
        ),
      ],
      gtins: gtins.flatMap(({ lotId, gtin }) => (lotId === lot.lotId ? [gtin] : [])),
      certainty: certainties.get(lot.lotId) ?? 'possible',
    }));
  }

  /** Photos of containers of these lots that were taken when they were found for this recall, the latest first. */
  async photos(studioId: string, recallId: string, lotIds: readonly string[]): Promise<string[]> {
    if (lotIds.length === 0) return [];
    const rows = await this.database.read<{ photoId: string }>(
      `SELECT recall_finding.photo_id AS "photoId"
       FROM recall_finding JOIN container
         ON container.studio_id = recall_finding.studio_id AND container.id = recall_finding.container_id
       WHERE recall_finding.studio_id = $1 AND recall_finding.recall_id = $2
         AND recall_finding.photo_id IS NOT NULL AND container.lot_id IN (${placeholders(lotIds, 3)})
       ORDER BY recall_finding.recorded_at DESC, recall_finding.id DESC LIMIT ${mostPhotos}`,
      [studioId, recallId, ...lotIds],
    );
    return rows.map(({ photoId }) => photoId);
  }
}

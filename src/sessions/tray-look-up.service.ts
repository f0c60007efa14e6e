import { Injectable } from '@nestjs/common';
import type { SymbolReading } from '../catalogue/barcode.js';
import type { Actor } from '../platform/actor.js';
import { placeholders, type Read } from '../platform/database/database.js';
import { notFound, Problem } from '../platform/problem.js';
import type { Named, Pick } from './meant-container.js';
import {
  type FoundGoods,
  namedBy,
  type SoughtBySymbol,
  type SymbolNaming,
  soughtBy,
} from './symbol-naming.js';
import type { KnownBy } from './vocabulary.js';

/** A line that lies on some tray. */
export interface LineOnTray {
  id: string;
  sessionId: string;
  containerId: string;
  productId: string;
  lotId: string;
  pieces: number;
  knownBy: KnownBy;
  serial: string | null;
  admittedAt: string;
}

/** Loads the facts of a tray. Every question is one look-up. */
@Injectable()
export class TrayLookUp {
  /** Lines on trays: those of one session, and those that reserve pieces of the given products anywhere. */
  async linesOnTrays(
    read: Read,
    studioId: string,
    sessionId: string,
    productIds: readonly string[],
  ): Promise<LineOnTray[]> {
    const orProducts = productIds.length > 0 ? ` OR product_id IN (${placeholders(productIds, 3)})` : '';
    return read<LineOnTray>(
      `SELECT id, session_id AS "sessionId", container_id AS "containerId", product_id AS "productId",
         lot_id AS "lotId", pieces, known_by AS "knownBy", serial, admitted_at AS "admittedAt"
       FROM tray_line WHERE studio_id = $1 AND state = 'on tray' AND (session_id = $2${orProducts})
       ORDER BY admitted_at, id`,
      [studioId, sessionId, ...productIds],
    );
  }

  /** Of these products, those of which a piece of this serial lies on a tray or was used. */
  async productsWithSerial(
    read: Read,
    studioId: string,
    productIds: readonly string[],
    serial: string,
  ): Promise<string[]> {
    const rows = await read<{ product_id: string }>(
      `SELECT DISTINCT product_id FROM tray_line
       WHERE studio_id = $1 AND serial = $2 AND product_id IN (${placeholders(productIds, 3)})
         AND (state = 'on tray' OR settled_as IN ('used', 'opened unused'))`,
      [studioId, serial, ...productIds],
    );
    return rows.map((row) => row.product_id);
  }

  /** Whether a lot is one of these products'. */
  async isLotOf(
    read: Read,
    studioId: string,
    lotId: string,
    productIds: readonly string[],
  ): Promise<boolean> {
    const rows = await read(
      `SELECT id FROM lot WHERE studio_id = $1 AND id = $2 AND product_id IN (${placeholders(productIds, 3)})`,
      [studioId, lotId, ...productIds],
    );
    return rows.length > 0;
  }

  /**
   * What a symbol names in this studio, and how it is read here.
   * @throws Problem unusable-symbol when it cannot be read, unknown-symbol when nothing here has it
   */
  async named(
    read: Read,
    actor: Actor,
    given: SymbolReading,
  ): Promise<Extract<SymbolNaming, { kind: 'named' }>> {
    const naming = namedBy(given, await this.found(read, actor, soughtBy(given)));
    if (naming.kind === 'unknown') throw new Problem(422, 'unknown-symbol', naming.detail, naming.facts);
    if (naming.kind === 'unusable') {
      const errors = given.kind === 'invalid' ? given.errors : [];
      throw new Problem(400, 'unusable-symbol', naming.detail, { errors });
    }
    return naming;
  }

  private async found(read: Read, actor: Actor, sought: SoughtBySymbol): Promise<FoundGoods> {
    const labels =
      sought.labelCode === null
        ? []
        : await read<FoundGoods['labels'][number]>(
            `SELECT container.label_code AS code, container.id AS "containerId", container.lot_id AS "lotId",
               lot.product_id AS "productId"
             FROM container JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
             WHERE container.studio_id = $1 AND container.label_code = $2`,
            [actor.studioId, sought.labelCode],
          );
    if (labels.length > 0) return { labels, gtins: [], lotCodes: [] };
    const gtins =
      sought.gtin === null
        ? []
        : await read<FoundGoods['gtins'][number]>(
            `SELECT gtin, product_id AS "productId", content_count AS "contentCount"
             FROM product_gtin WHERE chain_id = $1 AND gtin = $2`,
            [actor.chainId, sought.gtin],
          );
    const [product] = gtins;
    const isHopeless = sought.lotCodes.length === 0 || (sought.gtin !== null && !product);
    const lotCodes = isHopeless
      ? []
      : await this.lotsByCode(read, actor, sought.lotCodes, product?.productId);
    return { labels, gtins, lotCodes };
  }

  /** What the narrowest of the picks names. @throws Problem not-found */
  async picked(read: Read, actor: Actor, pick: Pick): Promise<Named> {
    if (pick.containerId !== undefined) {
      const [row] = await read<{ product_id: string; lot_id: string }>(
        `SELECT lot.product_id, lot.id AS lot_id FROM container
           JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
         WHERE container.studio_id = $1 AND container.id = $2`,
        [actor.studioId, pick.containerId],
      );
      if (!row) throw notFound('container', pick.containerId);
      return { productIds: [row.product_id], lotIds: [row.lot_id], containerId: pick.containerId };
    }
    if (pick.lotId !== undefined) {
      const [row] = await read<{ product_id: string }>(
        'SELECT product_id FROM lot WHERE studio_id = $1 AND id = $2',
        [actor.studioId, pick.lotId],
      );
      if (!row) throw notFound('lot', pick.lotId);
      return { productIds: [row.product_id], lotIds: [pick.lotId], containerId: null };
    }
    const productId = pick.productId ?? '';
    const [row] = await read('SELECT id FROM product WHERE chain_id = $1 AND id = $2', [
      actor.chainId,
      productId,
    ]);
    if (!row) throw notFound('product', productId);
    return { productIds: [productId], lotIds: null, containerId: null };
  }

  private lotsByCode(read: Read, actor: Actor, codes: readonly string[], productId?: string) {
    const parameters = [actor.studioId, ...codes];
    const list = placeholders(codes);
    const ofProduct = productId === undefined ? '' : ` AND lot.product_id = $${parameters.push(productId)}`;
    return read<FoundGoods['lotCodes'][number]>(
      `SELECT DISTINCT lot_code.code, lot.id AS "lotId", lot.product_id AS "productId", lot.use_by AS "useBy"
       FROM lot_code JOIN lot ON lot.studio_id = lot_code.studio_id AND lot.id = lot_code.lot_id
       WHERE lot_code.studio_id = $1 AND lot_code.code IN (${list})${ofProduct}
       ORDER BY lot.id LIMIT 50`,
      parameters,
    );
  }
}

import { Injectable } from '@nestjs/common';
import type { SymbolReading } from '../catalogue/barcode.js';
import type { Actor } from '../platform/actor.js';
import { placeholders, type Read } from '../platform/database/database.js';
import { notFound, Problem } from '../platform/problem.js';
import type { Named, Pick } from './meant-container.js';
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

/** What a symbol names, and what package it stands on. */
export interface NamedBySymbol extends Named {
  /** Pieces in the package whose product number the symbol bears; null when it bears none. */
  contentCount: number | null;
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

  /** Whether a serial lies on a tray or was used. */
  async serialKnown(read: Read, studioId: string, productId: string, serial: string): Promise<boolean> {
    const rows = await read(
      `SELECT id FROM tray_line WHERE studio_id = $1 AND product_id = $2 AND serial = $3
         AND (state = 'on tray' OR settled_as IN ('used', 'opened unused')) LIMIT 1`,
      [studioId, productId, serial],
    );
    return rows.length > 0;
  }

  /**
   * A label that was never printed here is another company's: one foreign text of that length in about thirty passes the
   * label's check by chance. Then it is read as what it is besides.
   */
  async recognised(read: Read, studioId: string, reading: SymbolReading): Promise<SymbolReading> {
    if (reading.kind !== 'own label') return reading;
    const known = await read('SELECT id FROM container WHERE studio_id = $1 AND label_code = $2', [
      studioId,
      reading.code,
    ]);
    if (known.length > 0) return reading;
    const { code: _, kind: __, elements, text, symbologyIdentifier, ...facts } = reading;
    const whatWasRead = symbologyIdentifier === undefined ? { text } : { text, symbologyIdentifier };
    if (elements.length === 0) return { ...whatWasRead, kind: 'plain text', doubts: [] };
    const namesProduct = facts.gtin14 !== undefined || facts.contentGtin14 !== undefined;
    return namesProduct ? { ...whatWasRead, ...facts, kind: 'gs1', elements } : reading;
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
   * What a symbol names in this studio.
   * @throws Problem unusable-symbol when it cannot be read, unknown-symbol when nothing here has it
   */
  async named(read: Read, actor: Actor, reading: SymbolReading): Promise<NamedBySymbol> {
    switch (reading.kind) {
      case 'invalid':
        throw new Problem(
          400,
          'unusable-symbol',
          `The symbol cannot be used: ${reading.errors[0]?.message ?? 'it holds nothing'} Scan it again, or type the lot code.`,
          { errors: reading.errors },
        );
      case 'own label':
        return this.byLabel(read, actor, reading.code);
      case 'product only':
        return this.byProductNumber(read, actor, reading.gtin14);
      case 'gs1': {
        const gtin = reading.gtin14 ?? reading.contentGtin14;
        if (gtin === undefined) {
          throw unknownSymbol('This symbol names no product (it has neither AI 01 nor AI 02).');
        }
        const product = await this.byProductNumber(read, actor, gtin);
        if (reading.lotCode === undefined) return product;
        const lots = await this.lotsByCode(read, actor, [reading.lotCode], product.productIds[0]);
        if (lots.length === 0) {
          throw unknownSymbol(
            `Lot ${reading.lotCode} of this product was never received here. Receive it first, or pick the lot from the list.`,
            { productId: product.productIds[0] ?? null, lotCode: reading.lotCode },
          );
        }
        // The same code with another use-by is another lot: the date in the symbol tells which.
        const dated = lots.filter((lot) => lot.use_by === reading.useBy?.date);
        return {
          productIds: product.productIds,
          lotIds: (dated.length > 0 ? dated : lots).map((lot) => lot.id),
          containerId: null,
          contentCount: reading.gtin14 === undefined ? null : product.contentCount,
        };
      }
      case 'plain text':
        return this.byLotCode(read, actor, reading.text);
    }
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

  private async byLotCode(read: Read, actor: Actor, text: string): Promise<NamedBySymbol> {
    const lots = await this.lotsByCode(read, actor, [text, text.toUpperCase()]);
    if (lots.length === 0) {
      throw unknownSymbol(
        `"${text.slice(0, 60)}" is neither a label nor a lot code known here. Check the label, or pick the product and lot from the list.`,
      );
    }
    return {
      productIds: [...new Set(lots.map((lot) => lot.product_id))],
      lotIds: lots.map((lot) => lot.id),
      containerId: null,
      contentCount: null,
    };
  }

  private async byLabel(read: Read, actor: Actor, code: string): Promise<NamedBySymbol> {
    const [row] = await read<{ id: string; lot_id: string; product_id: string }>(
      `SELECT container.id, container.lot_id, lot.product_id FROM container
         JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
       WHERE container.studio_id = $1 AND container.label_code = $2`,
      [actor.studioId, code],
    );
    if (!row)
      throw unknownSymbol(`The label ${code} belongs to nothing in this studio.`, { labelCode: code });
    return { productIds: [row.product_id], lotIds: [row.lot_id], containerId: row.id, contentCount: null };
  }

  private async byProductNumber(read: Read, actor: Actor, gtin: string): Promise<NamedBySymbol> {
    const [row] = await read<{ product_id: string; content_count: number }>(
      'SELECT product_id, content_count FROM product_gtin WHERE chain_id = $1 AND gtin = $2',
      [actor.chainId, gtin],
    );
    if (!row) {
      throw unknownSymbol(`No product here has the GTIN ${gtin}. Add the GTIN to its product first.`, {
        gtin,
      });
    }
    return { productIds: [row.product_id], lotIds: null, containerId: null, contentCount: row.content_count };
  }

  private lotsByCode(read: Read, actor: Actor, codes: string[], productId?: string) {
    const parameters = [actor.studioId, ...new Set(codes)];
    const list = placeholders(parameters.slice(1));
    const ofProduct = productId === undefined ? '' : ` AND lot.product_id = $${parameters.push(productId)}`;
    return read<{ id: string; product_id: string; use_by: string | null }>(
      `SELECT DISTINCT lot.id, lot.product_id, lot.use_by FROM lot_code
         JOIN lot ON lot.studio_id = lot_code.studio_id AND lot.id = lot_code.lot_id
       WHERE lot_code.studio_id = $1 AND lot_code.code IN (${list})${ofProduct}
       ORDER BY lot.id LIMIT 50`,
      parameters,
    );
  }
}

function unknownSymbol(detail: string, extensions: Record<string, unknown> = {}): Problem {
  return new Problem(422, 'unknown-symbol', detail, extensions);
}

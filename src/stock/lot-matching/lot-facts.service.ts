import { Injectable } from '@nestjs/common';
import { placeholders, type Read, type SqlValue } from '../../platform/database/database.js';
import type { CodeState, LotCodeKind, UseByPrecision } from '../vocabulary.js';
import { writtenForm } from './code-forms.js';
import type { LotFacts, ProductFacts, RecordedCode } from './lot-facts.js';

interface LotRow {
  lotId: string;
  productId: string;
  codeState: CodeState;
  useBy: string | null;
  useByPrecision: UseByPrecision;
  manufacturedOn: string | null;
  kind: LotCodeKind | null;
  code: string | null;
  supersededAt: string | null;
}

/** A statement takes so many parameters on either engine. */
const idsAskedAtOnce = 5_000;

/** Loads what notices are compared with: a few statements for all lots of a studio. */
@Injectable()
export class LotFactsReader {
  /** The products of a chain, archived ones too, or some of them, by id. */
  async products(
    read: Read,
    chainId: string,
    productIds?: readonly string[],
  ): Promise<Map<string, ProductFacts>> {
    const products = new Map<string, ProductFacts & { gtins: string[] }>();
    for (const [condition, ids] of inParts('product.id', productIds)) {
      const rows = await read<Omit<ProductFacts, 'gtins'> & { gtin: string | null }>(
        `SELECT product.id AS "productId", maker.name AS "makerName", product.name AS "productName", product.shade,
           product_gtin.gtin
         FROM product
           JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
           LEFT JOIN product_gtin
             ON product_gtin.chain_id = product.chain_id AND product_gtin.product_id = product.id
         WHERE product.chain_id = $1 ${condition} ORDER BY product.id, product_gtin.gtin`,
        [chainId, ...ids],
      );
      for (const { gtin, ...row } of rows) {
        const product = products.get(row.productId) ?? { ...row, gtins: [] };
        products.set(row.productId, product);
        if (gtin !== null) product.gtins.push(gtin);
      }
    }
    return products;
  }

  /**
   * Lots that bear one of these codes, whatever the case and the spaces around it; and every lot with a code in which
   * characters beyond ASCII stand, since it may be one of these in another encoding.
   */
  async lotsOfCodes(read: Read, studioId: string, codes: readonly string[]): Promise<string[]> {
    const folded = [...new Set(codes.map(writtenForm))];
    const rows = await read<{ id: string }>(
      `SELECT DISTINCT lot_id AS id FROM lot_code
       WHERE studio_id = $1 AND (upper(trim(code)) IN (${placeholders(folded)}) OR octet_length(code) <> length(code))`,
      [studioId, ...folded],
    );
    return rows.map(({ id }) => id);
  }

  /**
   * Lots of these products, or the lots of these ids that are of them, the oldest first. No blends: what holds a lot reaches
   * the blends made of it.
   */
  async lots(
    read: Read,
    studioId: string,
    products: ReadonlyMap<string, ProductFacts>,
    lotIds?: readonly string[],
  ): Promise<LotFacts[]> {
    if (products.size === 0) return [];
    const [column, asked] =
      lotIds === undefined ? ['lot.product_id', [...products.keys()]] : ['lot.id', [...lotIds]];
    const lots = new Map<string, LotFacts & { codes: RecordedCode[] }>();
    for (const [condition, ids] of inParts(column, asked)) {
      const rows = await read<LotRow>(
        `SELECT lot.id AS "lotId", lot.product_id AS "productId", lot.code_state AS "codeState", lot.use_by AS "useBy",
           lot.use_by_precision AS "useByPrecision", lot.manufactured_on AS "manufacturedOn",
           lot_code.kind, lot_code.code, lot_code.superseded_at AS "supersededAt"
         FROM lot LEFT JOIN lot_code ON lot_code.studio_id = lot.studio_id AND lot_code.lot_id = lot.id
         WHERE lot.studio_id = $1 AND lot.origin <> 'blend' ${condition}
         ORDER BY lot.created_at, lot.id, lot_code.recorded_at, lot_code.id`,
        [studioId, ...ids],
      );
      for (const { kind, code, supersededAt, ...row } of rows) {
        const product = products.get(row.productId);
        if (product === undefined) continue;
        const lot = lots.get(row.lotId) ?? { ...product, ...row, codes: [] };
        lots.set(row.lotId, lot);
        if (kind !== null && code !== null) lot.codes.push({ kind, code, superseded: supersededAt !== null });
      }
    }
    return [...lots.values()];
  }
}

/** Conditions for as many ids at a time as a statement takes; none at all when no ids are given. */
function inParts(column: string, ids: readonly string[] | undefined): [string, SqlValue[]][] {
  if (ids === undefined) return [['', []]];
  const parts: [string, SqlValue[]][] = [];
  for (let start = 0; start < ids.length; start += idsAskedAtOnce) {
    const part = ids.slice(start, start + idsAskedAtOnce);
    parts.push([`AND ${column} IN (${placeholders(part)})`, part]);
  }
  return parts;
}

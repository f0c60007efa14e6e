import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { placeholders, type Read } from '../../platform/database/database.js';
import { foldedName } from './folded-name.js';
import type { KnownProduct, StockOnRecord } from './opening-stock-plan.js';
import type { StockRow } from './opening-stock-row.js';

/** A chain with more makers, or makers with more products, would have to look for them by hand. */
const mostMakers = 2_000;
const mostProducts = 20_000;
const mostPlaces = 500;
const mostLots = 20_000;

/** Looks up what a file of opening stock may touch, in few queries however long it is. */
@Injectable()
export class StockRecordLookUp {
  /**
   * @param read of a transaction, or outside
   * @param people who works here, by name: names are opened before a transaction, never inside it
   * @param now instant by which the day is told
   */
  async find(
    read: Read,
    actor: Actor,
    rows: readonly StockRow[],
    people: StockOnRecord['people'],
    now: string,
  ): Promise<StockOnRecord> {
    const { chainId, studioId } = actor;
    const gtins = await this.gtins(read, chainId, rows);
    const named = new Set(rows.map(({ maker }) => foldedName(maker)));
    const makers = await read<{ id: string; name: string }>(
      `SELECT id, name FROM maker WHERE chain_id = $1 ORDER BY id LIMIT ${mostMakers}`,
      [chainId],
    );
    const makerIds = makers.filter(({ name }) => named.has(foldedName(name))).map(({ id }) => id);
    const products = await this.products(read, chainId, makerIds, gtins);
    const places = await read<{ id: string; name: string }>(
      `SELECT id, name FROM place WHERE studio_id = $1 AND archived_at IS NULL ORDER BY lower(name), id LIMIT ${mostPlaces}`,
      [studioId],
    );
    return {
      makers,
      products,
      gtins,
      lots: await this.lots(read, studioId, rows),
      places,
      people,
      day: localDay(now, actor.timeZone),
    };
  }

  private async gtins(
    read: Read,
    chainId: string,
    rows: readonly StockRow[],
  ): Promise<{ gtin: string; productId: string; contentCount: number }[]> {
    const wanted = [...new Set(rows.flatMap(({ gtin }) => gtin ?? []))];
    if (wanted.length === 0) return [];
    return read(
      `SELECT gtin, product_id AS "productId", content_count AS "contentCount" FROM product_gtin
       WHERE chain_id = $1 AND gtin IN (${placeholders(wanted)})`,
      [chainId, ...wanted],
    );
  }

  private async products(
    read: Read,
    chainId: string,
    makerIds: readonly string[],
    gtins: readonly { productId: string }[],
  ): Promise<KnownProduct[]> {
    const ids = [...new Set(gtins.map(({ productId }) => productId))];
    if (makerIds.length === 0 && ids.length === 0) return [];
    const conditions = [
      ...(makerIds.length === 0 ? [] : [`maker_id IN (${placeholders(makerIds)})`]),
      ...(ids.length === 0 ? [] : [`id IN (${placeholders(ids, makerIds.length + 2)})`]),
    ];
    const found = await read<Omit<KnownProduct, 'archived'> & { archivedAt: string | null }>(
      `SELECT id, maker_id AS "makerId", name, shade, kind, stock_form AS "stockForm",
         volume_microlitres AS "volumeMicrolitres", opened_life AS "openedLife", points, "grouping", archived_at AS "archivedAt"
       FROM product WHERE chain_id = $1 AND (${conditions.join(' OR ')}) ORDER BY id LIMIT ${mostProducts}`,
      [chainId, ...makerIds, ...ids],
    );
    return found.map(({ archivedAt, ...product }) => ({ ...product, archived: archivedAt !== null }));
  }

  private async lots(
    read: Read,
    studioId: string,
    rows: readonly StockRow[],
  ): Promise<StockOnRecord['lots']> {
    const codes = [...new Set(rows.flatMap(({ printed }) => printed?.code ?? []))];
    if (codes.length === 0) return [];
    return read(
      `SELECT id AS "lotId", product_id AS "productId", code, use_by AS "useBy" FROM lot
       WHERE studio_id = $1 AND code IN (${placeholders(codes)}) ORDER BY created_at, id LIMIT ${mostLots}`,
      [studioId, ...codes],
    );
  }
}

import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database, type SqlValue } from '../platform/database/database.js';
import { maximumPageSize } from '../platform/request.dto.js';
import { type ContainerFact, ContainerFacts, type Read } from './container-facts.service.js';
import { assumedOpenedLife } from './container-views.service.js';
import type { LotPageDto } from './lot-list.dto.js';
import type { LotPageView, LotQuantitiesView, LotSummaryView } from './lot-list.views.js';
import { summariseStock } from './stock-level-summary.js';

const columns = `lot.id, lot.product_id AS "productId", product.name AS "productName", product.shade,
  maker.name AS "makerName", product.kind, lot.code, lot.code_state AS "codeState", lot.use_by AS "useBy",
  lot.use_by_precision AS "useByPrecision", lot.manufactured_on AS "manufacturedOn", lot.origin,
  lot.created_at AS "createdAt", lot.version`;
const tables = `lot
  JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
  JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id`;
const present = `EXISTS (
  SELECT 1 FROM container
    JOIN balance ON balance.studio_id = container.studio_id AND balance.container_id = container.id
  WHERE container.studio_id = lot.studio_id AND container.lot_id = lot.id AND balance.pieces > 0)`;

/** Finds lots. What is usable, held or expired is derived from their containers and never stored. */
@Injectable()
export class LotList {
  private readonly read: Read;

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly containerFacts: ContainerFacts,
  ) {
    this.read = (sql, parameters) => database.read(sql, parameters);
  }

  async page(actor: Actor, query: LotPageDto): Promise<LotPageView> {
    const { limit = maximumPageSize, after, productId, state, code } = query;
    const parameters: SqlValue[] = [actor.studioId];
    const conditions = ['lot.studio_id = $1'];
    if (productId !== undefined) conditions.push(`lot.product_id = $${parameters.push(productId)}`);
    if (code !== undefined) {
      conditions.push(`EXISTS (SELECT 1 FROM lot_code
        WHERE lot_code.studio_id = lot.studio_id AND lot_code.lot_id = lot.id
          AND lower(lot_code.code) = lower($${parameters.push(code)}))`);
    }
    if (state === 'empty') conditions.push(`NOT ${present}`);
    else if (state !== undefined) {
      const ids = await this.lotsWith(actor, state, productId);
      if (ids.length === 0) return { lots: [], next: null };
      conditions.push(`lot.id IN (${ids.map((id) => `$${parameters.push(id)}`).join(', ')})`);
    }
    if (after !== undefined) {
      conditions.push(`(lot.created_at, lot.id) < (
        SELECT created_at, id FROM lot AS last WHERE last.studio_id = $1 AND last.id = $${parameters.push(after)})`);
    }
    const rows = await this.database.read<Omit<LotSummaryView, 'quantities'>>(
      `SELECT ${columns} FROM ${tables} WHERE ${conditions.join(' AND ')}
       ORDER BY lot.created_at DESC, lot.id DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const lots = rows.slice(0, limit);
    const quantities = await this.quantities(
      actor,
      lots.map(({ id }) => id),
    );
    return {
      lots: lots.map((lot) => ({ ...lot, quantities: quantities(lot.id) })),
      next: rows.length > limit ? (lots.at(-1)?.id ?? null) : null,
    };
  }

  /** The lot in a list's form, or undefined. */
  async summary(actor: Actor, lotId: string): Promise<LotSummaryView | undefined> {
    const [row] = await this.database.read<Omit<LotSummaryView, 'quantities'>>(
      `SELECT ${columns} FROM ${tables} WHERE lot.studio_id = $1 AND lot.id = $2`,
      [actor.studioId, lotId],
    );
    if (!row) return undefined;
    const quantities = await this.quantities(actor, [lotId]);
    return { ...row, quantities: quantities(lotId) };
  }

  private async quantities(
    actor: Actor,
    lotIds: readonly string[],
  ): Promise<(lotId: string) => LotQuantitiesView> {
    const byLot = await this.containersByLot(actor, { lotIds });
    const assumed = await assumedOpenedLife(this.read, actor.studioId);
    const at = this.clock.now();
    return (lotId) => summariseStock(byLot.get(lotId) ?? [], assumed, at, actor.timeZone);
  }

  /** Ids of the lots of which at least one piece is in the state. */
  private async lotsWith(
    actor: Actor,
    state: 'usable' | 'held' | 'expired',
    productId: string | undefined,
  ): Promise<string[]> {
    const byLot = await this.containersByLot(
      actor,
      productId === undefined ? { all: true } : { productIds: [productId] },
    );
    const assumed = await assumedOpenedLife(this.read, actor.studioId);
    const at = this.clock.now();
    const piecesOf = {
      usable: (quantities: LotQuantitiesView) => quantities.usablePieces,
      held: (quantities: LotQuantitiesView) => quantities.heldPieces,
      expired: (quantities: LotQuantitiesView) => quantities.expiredPieces,
    }[state];
    return [...byLot]
      .filter(([, containers]) => piecesOf(summariseStock(containers, assumed, at, actor.timeZone)) > 0)
      .map(([lotId]) => lotId);
  }

  private async containersByLot(
    actor: Actor,
    choice: { lotIds: readonly string[] } | { productIds: readonly string[] } | { all: true },
  ): Promise<Map<string, ContainerFact[]>> {
    const byLot = new Map<string, ContainerFact[]>();
    for (const fact of await this.containerFacts.load(this.read, actor.studioId, choice)) {
      const containers = byLot.get(fact.lotId);
      if (containers) containers.push(fact);
      else byLot.set(fact.lotId, [fact]);
    }
    return byLot;
  }
}

import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database, type SqlValue } from '../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { type ContainerFact, ContainerFacts } from './container-facts.service.js';
import { summarySettings } from './container-views.service.js';
import type { LotPageDto } from './lot-list.dto.js';
import type { LotPageView, LotQuantitiesView, LotSummaryView } from './lot-list.views.js';
import { summariseStock } from './stock-level-summary.js';

type LotRow = Omit<LotSummaryView, 'quantities'>;

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

/** So many lots are judged at a time while a page of those in a state is gathered. */
const lotsJudgedAtOnce = 200;

type LotState = NonNullable<LotPageDto['state']>;
const piecesOf: Record<Exclude<LotState, 'empty'>, keyof LotQuantitiesView> = {
  usable: 'usablePieces',
  'ending soon': 'endingSoonPieces',
  held: 'heldPieces',
  expired: 'expiredPieces',
};

/** Finds lots. What is usable, held or expired is derived from their containers and never stored. */
@Injectable()
export class LotList {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly containerFacts: ContainerFacts,
  ) {}

  async page(actor: Actor, query: LotPageDto): Promise<LotPageView> {
    const { limit = defaultPageSize, after, state } = query;
    await refuseUnknownStart(this.database.read, 'lot', actor.studioId, after);
    const judged = state === undefined || state === 'empty' ? undefined : piecesOf[state];
    const step = judged === undefined ? limit + 1 : lotsJudgedAtOnce;
    const found: LotSummaryView[] = [];
    for (let from = after; found.length <= limit; ) {
      const lots = await this.summaries(actor, query, from, step);
      found.push(...lots.filter(({ quantities }) => judged === undefined || quantities[judged] > 0));
      if (lots.length < step) break;
      from = lots.at(-1)?.id;
    }
    const { shown, next } = pageOf(found, limit, ({ id }) => id);
    return { items: shown, next };
  }

  /** The lot in a list's form, or undefined. */
  async summary(actor: Actor, lotId: string): Promise<LotSummaryView | undefined> {
    const rows = await this.database.read<LotRow>(
      `SELECT ${columns} FROM ${tables} WHERE lot.studio_id = $1 AND lot.id = $2`,
      [actor.studioId, lotId],
    );
    const [summary] = await this.counted(actor, rows);
    return summary;
  }

  /** Lots in the order of the list; in a state that has to be judged, those of which anything is here. */
  private async summaries(
    actor: Actor,
    { productId, state, code }: LotPageDto,
    after: string | undefined,
    most: number,
  ): Promise<LotSummaryView[]> {
    const parameters: SqlValue[] = [actor.studioId];
    const conditions = ['lot.studio_id = $1'];
    if (productId !== undefined) conditions.push(`lot.product_id = $${parameters.push(productId)}`);
    if (code !== undefined) {
      conditions.push(`EXISTS (SELECT 1 FROM lot_code
        WHERE lot_code.studio_id = lot.studio_id AND lot_code.lot_id = lot.id
          AND lower(lot_code.code) = lower($${parameters.push(code)}))`);
    }
    if (state !== undefined) conditions.push(state === 'empty' ? `NOT ${present}` : present);
    if (after !== undefined) {
      conditions.push(`(lot.created_at, lot.id) < (
        SELECT created_at, id FROM lot AS last WHERE last.studio_id = $1 AND last.id = $${parameters.push(after)})`);
    }
    const rows = await this.database.read<LotRow>(
      `SELECT ${columns} FROM ${tables} WHERE ${conditions.join(' AND ')}
       ORDER BY lot.created_at DESC, lot.id DESC LIMIT $${parameters.push(most)}`,
      parameters,
    );
    return this.counted(actor, rows);
  }

  private async counted(actor: Actor, lots: readonly LotRow[]): Promise<LotSummaryView[]> {
    const { studioId, timeZone } = actor;
    const lotIds = lots.map(({ id }) => id);
    const byLot = new Map<string, ContainerFact[]>();
    for (const fact of await this.containerFacts.load(this.database.read, studioId, { lotIds })) {
      const containers = byLot.get(fact.lotId);
      if (containers) containers.push(fact);
      else byLot.set(fact.lotId, [fact]);
    }
    const settings = await summarySettings(this.database.read, studioId);
    const at = this.clock.now();
    return lots.map((lot) => ({
      ...lot,
      quantities: summariseStock(byLot.get(lot.id) ?? [], settings, at, timeZone),
    }));
  }
}

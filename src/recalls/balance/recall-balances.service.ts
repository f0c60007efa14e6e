import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database, placeholders, type SqlValue } from '../../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { invalidField, notFound } from '../../platform/problem.js';
import type { PageDto } from '../../platform/request.dto.js';
import { BlendAncestry } from '../../sessions/blend-ancestry.service.js';
import { shareOf, sharesInto } from '../../sessions/blend-shares.js';
import type { MovementView } from '../../stock/lot-list.views.js';
import { reachedLots } from '../containers/recall-containers.query.js';
import { RecallRegister } from '../recall-register.service.js';
import { balanceFigures } from './balance-account.js';
import { type LotAccount, RecallAccounts, totalsOf } from './recall-accounts.service.js';
import type { BalanceMovementPageDto } from './recall-balance.dto.js';
import type {
  BalanceMovementPageView,
  LotBalanceView,
  OtherEndView,
  RecallBalanceView,
} from './recall-balance.views.js';
import { bookedFigures } from './recall-figures.query.js';

const maximumOtherEnds = 200;

type NamedLot = Pick<
  LotBalanceView,
  'lotId' | 'productId' | 'productName' | 'shade' | 'makerName' | 'lotCode' | 'useBy'
>;

/** Shows the mass balance of a recall, lot by lot, with the movements behind each figure. */
@Injectable()
export class RecallBalances {
  constructor(
    private readonly database: Database,
    private readonly recalls: RecallRegister,
    private readonly accounts: RecallAccounts,
    private readonly ancestry: BlendAncestry,
  ) {}

  async page(
    { studioId }: Actor,
    recallId: string,
    { limit = defaultPageSize, after }: PageDto,
  ): Promise<RecallBalanceView> {
    const { read } = this.database;
    await this.recalls.find(read, studioId, recallId);
    await refuseUnknownStart(read, 'lot', studioId, after);
    const all = await this.accounts.of(read, studioId, recallId);
    const from = all.findIndex(({ lotId }) => lotId === after) + 1;
    if (after !== undefined && from === 0) {
      throw invalidField(
        'after',
        `The lot ${after} is none of this recall. Give the "next" of the page before.`,
      );
    }
    const { shown, next } = pageOf(all.slice(from), limit, ({ lotId }) => lotId);
    const ids = shown.map(({ lotId }) => lotId);
    const names = await this.names(studioId, ids);
    const shares = await this.sharesThroughBlends(studioId, ids, all);
    const otherEnds = await this.otherEnds(studioId, ids);
    const items = shown.flatMap((each) => {
      const named = names.get(each.lotId);
      if (!named) return [];
      return {
        ...named,
        ...viewOf(each),
        reachedThroughBlends: { shareMicrolitres: shares.get(each.lotId) ?? 0 },
        otherEnds: (otherEnds.get(each.lotId) ?? []).slice(0, maximumOtherEnds),
      };
    });
    return { items, next, ...totalsOf(all) };
  }

  /** @throws Problem not-found, also when the lot is none of the recall */
  async movements(
    { studioId }: Actor,
    recallId: string,
    lotId: string,
    { limit = defaultPageSize, after, kind }: BalanceMovementPageDto,
  ): Promise<BalanceMovementPageView> {
    const { read } = this.database;
    await this.recalls.find(read, studioId, recallId);
    await refuseUnknownStart(read, 'movement', studioId, after);
    const [reached] = await read(
      `WITH RECURSIVE ${reachedLots} SELECT lot_id FROM reached_lots WHERE lot_id = $3`,
      [studioId, recallId, lotId],
    );
    if (!reached) throw notFound('lot of this recall', lotId);
    const parameters: SqlValue[] = [studioId, recallId, lotId];
    const conditions = ['TRUE'];
    if (kind !== undefined) conditions.push(`booked.figure = $${parameters.push(kind)}`);
    if (after !== undefined) {
      conditions.push(
        `booked.sequence < (SELECT last.sequence FROM movement AS last
           WHERE last.studio_id = $1 AND last.id = $${parameters.push(after)})`,
      );
    }
    const rows = await read<MovementView>(
      `WITH RECURSIVE ${reachedLots.replaceAll('reached_lots AS', 'every_lot AS')},
         reached_lots AS (SELECT lot_id FROM every_lot WHERE lot_id = $3), ${bookedFigures}
       SELECT movement.id, movement.container_id AS "containerId", movement.kind, movement.pieces,
         movement.microlitres, movement.reverses_id AS "reversesId", reversal.id AS "reversedById",
         movement.session_id AS "sessionId", movement.reason, movement.occurred_at AS "occurredAt",
         movement.recorded_at AS "recordedAt", movement.person_id AS "personId"
       FROM booked
         JOIN movement ON movement.studio_id = $1 AND movement.id = booked.id
         LEFT JOIN movement AS reversal ON reversal.studio_id = $1 AND reversal.reverses_id = movement.id
       WHERE ${conditions.join(' AND ')}
       ORDER BY booked.sequence DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { items: shown, next };
  }

  private async names(studioId: string, lotIds: readonly string[]): Promise<Map<string, NamedLot>> {
    if (lotIds.length === 0) return new Map();
    const rows = await this.database.read<NamedLot>(
      `SELECT lot.id AS "lotId", lot.product_id AS "productId", product.name AS "productName", product.shade,
         maker.name AS "makerName", lot.code AS "lotCode", lot.use_by AS "useBy"
       FROM lot
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE lot.studio_id = $1 AND lot.id IN (${placeholders(lotIds)})`,
      [studioId, ...lotIds],
    );
    return new Map(rows.map((row) => [row.lotId, row]));
  }

  /** Of what was used of blends, the share that is each lot’s, by its id; booked nowhere, since the pouring was. */
  private async sharesThroughBlends(
    studioId: string,
    lotIds: readonly string[],
    all: readonly LotAccount[],
  ): Promise<Map<string, number>> {
    const used = all.filter(({ isBlend, account }) => isBlend && account.figures.used.microlitres > 0);
    const sums = new Map<string, number>();
    if (used.length === 0) return sums;
    const pourings = await this.ancestry.pouringsFrom(studioId, lotIds);
    for (const { lotId: blendId, account } of used) {
      const shares = sharesInto(blendId, pourings);
      for (const lotId of lotIds) {
        const share = lotId === blendId ? 0 : (shares.get(lotId) ?? 0);
        if (share > 0) sums.set(lotId, (sums.get(lotId) ?? 0) + account.figures.used.microlitres * share);
      }
    }
    return new Map([...sums].map(([lotId, microlitres]) => [lotId, shareOf(microlitres, 1)]));
  }

  private async otherEnds(studioId: string, lotIds: readonly string[]): Promise<Map<string, OtherEndView[]>> {
    const ends = new Map<string, OtherEndView[]>();
    if (lotIds.length === 0) return ends;
    const rows = await this.database.read<OtherEndView & { ownLotId: string }>(
      `SELECT line.lot_id AS "ownLotId", 'to' AS direction, line.receiver_id AS "studioId",
         studio.name AS "studioName", goods.lot_id AS "lotId",
         CASE WHEN outcome.id IS NULL THEN line.pieces ELSE coalesce(goods.pieces, 0) END AS pieces,
         CASE WHEN outcome.id IS NULL THEN line.microlitres ELSE coalesce(goods.microlitres, 0) END AS microlitres,
         coalesce(outcome.kind, 'in transit') AS state, line.id AS "lineId"
       FROM transfer_line AS line
         JOIN studio ON studio.id = line.receiver_id
         LEFT JOIN transfer_outcome AS outcome ON outcome.sender_id = line.studio_id AND outcome.line_id = line.id
         LEFT JOIN transfer_goods AS goods
           ON goods.studio_id = outcome.studio_id AND goods.outcome_id = outcome.id
       WHERE line.studio_id = $1 AND line.lot_id IN (${placeholders(lotIds)})
         AND coalesce(outcome.kind, 'in transit') <> 'withdrawn'
       UNION ALL
       SELECT goods.lot_id, 'from', line.studio_id, studio.name, line.lot_id, goods.pieces, goods.microlitres,
         outcome.kind, line.id
       FROM transfer_goods AS goods
         JOIN transfer_outcome AS outcome
           ON outcome.studio_id = goods.studio_id AND outcome.id = goods.outcome_id
         JOIN transfer_line AS line ON line.studio_id = outcome.sender_id AND line.id = outcome.line_id
         JOIN studio ON studio.id = line.studio_id
       WHERE goods.studio_id = $1 AND goods.lot_id IN (${placeholders(lotIds)}) AND outcome.kind <> 'withdrawn'
       ORDER BY 1, 2, 9`,
      [studioId, ...lotIds],
    );
    for (const { ownLotId, direction, studioName, lotId, pieces, microlitres, state, ...other } of rows) {
      const end = { direction, studioId: other.studioId, studioName, lotId, pieces, microlitres, state };
      const known = ends.get(ownLotId);
      if (known) known.push(end);
      else ends.set(ownLotId, [end]);
    }
    return ends;
  }
}

function viewOf({ lotId, isBlend, standing, account, movements }: LotAccount) {
  const { figures, ...rest } = account;
  return {
    lotId,
    isBlend,
    standing,
    ...rest,
    figures: balanceFigures.map((kind) => ({
      kind,
      ...figures[kind],
      movements: movements.get(kind) ?? 0,
    })),
  };
}

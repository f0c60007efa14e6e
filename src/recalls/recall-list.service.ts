import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Database, type SqlValue } from '../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { invalidField, notFound } from '../platform/problem.js';
import type { PageDto } from '../platform/request.dto.js';
import type { LotScope } from '../stock/lot-matching/lot-scope.js';
import { recallLots, recallReach, standingOfLot, surestGrade } from './recall-lots.query.js';
import type { RecallPageDto } from './recalls.dto.js';
import type {
  MatchReasonView,
  RecallLotPageView,
  RecallLotView,
  RecallPageView,
  RecallScopeView,
  RecallSummaryView,
  RecallView,
} from './recalls.views.js';

const mostScopes = 50;

type SummaryRow = Omit<RecallSummaryView, 'chainWide'> & { chainWide: number };

/** How many lots of each standing the latest scope of `recall` has. */
const counted = (standing: string) => `(SELECT count(*) FROM recall_lot
  WHERE recall_lot.studio_id = recall.studio_id AND recall_lot.recall_id = recall.id
    AND recall_lot.scope_number = (SELECT max(number) FROM recall_scope
      WHERE recall_scope.studio_id = recall.studio_id AND recall_scope.recall_id = recall.id)
    AND ${surestGrade}
    AND '${standing}' = ${standingOfLot})`;

const summaryColumns = `recall.id, recall.kind, recall.title, recall.state, recall.chain_wide AS "chainWide",
  recall.opened_in_studio_id AS "openedInStudioId", recall.opened_at AS "openedAt", recall.opened_by AS "openedBy",
  recall.ended_at AS "endedAt",
  (SELECT coalesce(max(number), 0) FROM recall_scope
   WHERE recall_scope.studio_id = recall.studio_id AND recall_scope.recall_id = recall.id) AS "scopeNumber",
  ${counted('affected')} AS "affectedLots", ${counted('undecided')} AS "undecidedLots",
  ${counted('not affected')} AS "notAffectedLots"`;

interface StateRow {
  version: number;
  heldLots: number;
  caughtLots: number;
  standingHolds: number;
  traysReached: number;
  withdrawalReason: string | null;
}

type ScopeRow = Omit<RecallScopeView, 'scope'> & { scope: string };

type LotRow = Omit<RecallLotView, 'reasons' | 'held' | 'decision'> & {
  reasons: string;
  held: number;
  decision: 'affected' | 'not affected' | null;
  decisionReason: string | null;
  decidedAt: string | null;
  decidedBy: string | null;
};

/** Shows recalls and their lots. */
@Injectable()
export class RecallList {
  constructor(private readonly database: Database) {}

  /** The latest first; drills too, which say so. */
  async page(
    actor: Actor,
    { state, limit = defaultPageSize, after }: RecallPageDto,
  ): Promise<RecallPageView> {
    await refuseUnknownStart(this.database.read, 'recall', actor.studioId, after);
    const parameters: SqlValue[] = [actor.studioId];
    const put = (value: SqlValue) => `$${parameters.push(value)}`;
    const rows = await this.database.read<SummaryRow>(
      `SELECT ${summaryColumns} FROM recall
       WHERE recall.studio_id = $1 ${state === undefined ? '' : `AND recall.state = ${put(state)}`}
         ${
           after === undefined
             ? ''
             : `AND (recall.opened_at, recall.id) < (SELECT opened_at, id FROM recall AS last
                  WHERE last.studio_id = $1 AND last.id = ${put(after)})`
         }
       ORDER BY recall.opened_at DESC, recall.id DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { items: shown.map(summaryOf), next };
  }

  /** @throws Problem not-found */
  async show({ studioId }: Actor, recallId: string): Promise<RecallView> {
    const [row] = await this.database.read<SummaryRow>(
      `SELECT ${summaryColumns} FROM recall WHERE recall.studio_id = $1 AND recall.id = $2`,
      [studioId, recallId],
    );
    if (!row) throw notFound('recall', recallId);
    const [state] = await this.database.read<StateRow>(
      `WITH RECURSIVE ${recallLots}, ${recallReach}
       SELECT recall.version,
         (SELECT count(DISTINCT recall_hold.lot_id) FROM recall_hold
          WHERE recall_hold.studio_id = $1 AND recall_hold.recall_id = $2 AND NOT EXISTS (
            SELECT 1 FROM hold_release
            WHERE hold_release.studio_id = $1 AND hold_release.hold_id = recall_hold.hold_id)) AS "heldLots",
         (SELECT count(DISTINCT standing_hold_catch.lot_id)
          FROM recall_standing_hold JOIN standing_hold_catch
            ON standing_hold_catch.studio_id = $1
            AND standing_hold_catch.standing_hold_id = recall_standing_hold.standing_hold_id
          WHERE recall_standing_hold.studio_id = $1 AND recall_standing_hold.recall_id = $2) AS "caughtLots",
         (SELECT count(*) FROM recall_standing_hold
          WHERE recall_standing_hold.studio_id = $1 AND recall_standing_hold.recall_id = $2 AND NOT EXISTS (
            SELECT 1 FROM standing_hold_end
            WHERE standing_hold_end.studio_id = $1
              AND standing_hold_end.standing_hold_id = recall_standing_hold.standing_hold_id)) AS "standingHolds",
         (SELECT count(DISTINCT tray_line.session_id) FROM tray_line
          WHERE tray_line.studio_id = $1 AND tray_line.state = 'on tray'
            AND tray_line.lot_id IN (SELECT lot_id FROM recall_reach)) AS "traysReached",
         (SELECT reason FROM recall_closing
          WHERE recall_closing.studio_id = $1 AND recall_closing.recall_id = $2
            AND recall_closing.outcome = 'withdrawn' AND recall.state = 'withdrawn'
          ORDER BY recall_closing.recorded_at DESC LIMIT 1) AS "withdrawalReason"
       FROM recall WHERE recall.studio_id = $1 AND recall.id = $2`,
      [studioId, recallId],
    );
    if (!state) throw notFound('recall', recallId);
    const { standingHolds, ...stands } = state;
    return {
      ...summaryOf(row),
      ...stands,
      standingHold: standingHolds > 0,
      scopes: await this.scopes(studioId, recallId),
    };
  }

  /** The lots that the latest scope meets, what waits for a decision first. */
  async lots(
    { studioId }: Actor,
    recallId: string,
    { limit = defaultPageSize, after }: PageDto,
  ): Promise<RecallLotPageView> {
    await this.requireRecall(studioId, recallId);
    const parameters: SqlValue[] = after === undefined ? [studioId, recallId] : [studioId, recallId, after];
    const rows = await this.database.read<LotRow>(
      `WITH ${recallLots},
       ranked AS (
         SELECT recall_lots.*, CASE standing WHEN 'undecided' THEN 0 WHEN 'affected' THEN 1 ELSE 2 END AS rank
         FROM recall_lots),
       chosen AS (
         SELECT * FROM ranked
         ${after === undefined ? '' : 'WHERE (rank, lot_id) > (SELECT rank, lot_id FROM ranked WHERE lot_id = $3)'}
         ORDER BY rank, lot_id LIMIT ${limit + 1})
       SELECT chosen.lot_id AS "lotId", chosen.grade, chosen.item_index AS "itemIndex", chosen.reasons, chosen.standing,
         latest.decision, latest.reason AS "decisionReason", latest.occurred_at AS "decidedAt",
         latest.person_id AS "decidedBy",
         (SELECT count(*) FROM recall_hold
          WHERE recall_hold.studio_id = $1 AND recall_hold.recall_id = $2 AND recall_hold.lot_id = chosen.lot_id
            AND NOT EXISTS (SELECT 1 FROM hold_release
              WHERE hold_release.studio_id = $1 AND hold_release.hold_id = recall_hold.hold_id)) AS held,
         lot.product_id AS "productId", maker.name AS "makerName", product.name AS "productName", product.shade,
         lot.code, lot.use_by AS "useBy",
         (SELECT coalesce(sum(pieces), 0) FROM balance
          WHERE balance.studio_id = $1 AND balance.lot_id = chosen.lot_id) AS "onHandPieces",
         (SELECT coalesce(sum(microlitres), 0) FROM balance
          WHERE balance.studio_id = $1 AND balance.lot_id = chosen.lot_id) AS "onHandMicrolitres"
       FROM chosen
         JOIN lot ON lot.studio_id = $1 AND lot.id = chosen.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
         LEFT JOIN recall_lot_decision AS latest ON latest.studio_id = $1 AND latest.id = (
           SELECT decided.id FROM recall_lot_decision AS decided
           WHERE decided.studio_id = $1 AND decided.recall_id = $2 AND decided.lot_id = chosen.lot_id
           ORDER BY decided.recorded_at DESC, decided.id DESC LIMIT 1)
       ORDER BY chosen.rank, chosen.lot_id`,
      parameters,
    );
    if (rows.length === 0 && after !== undefined) await this.refuseUnknownLot(studioId, recallId, after);
    const { shown, next } = pageOf(rows, limit, ({ lotId }) => lotId);
    return { items: shown.map(lotOf), next };
  }

  private async scopes(studioId: string, recallId: string): Promise<RecallScopeView[]> {
    const rows = await this.database.read<ScopeRow>(
      `SELECT number, notice_id AS "noticeId", scope, issuer, reference, issued_on AS "issuedOn", classification, risk,
         remedy, reason, occurred_at AS "occurredAt", person_id AS "personId"
       FROM recall_scope WHERE studio_id = $1 AND recall_id = $2 ORDER BY number DESC LIMIT ${mostScopes}`,
      [studioId, recallId],
    );
    return rows.map(({ scope, ...row }) => ({ ...row, scope: JSON.parse(scope) as LotScope }));
  }

  private async requireRecall(studioId: string, recallId: string): Promise<void> {
    const rows = await this.database.read('SELECT id FROM recall WHERE studio_id = $1 AND id = $2', [
      studioId,
      recallId,
    ]);
    if (rows.length === 0) throw notFound('recall', recallId);
  }

  private async refuseUnknownLot(studioId: string, recallId: string, lotId: string): Promise<void> {
    const rows = await this.database.read(
      `WITH ${recallLots} SELECT lot_id FROM recall_lots WHERE lot_id = $3`,
      [studioId, recallId, lotId],
    );
    if (rows.length > 0) return;
    throw invalidField(
      'after',
      `The recall has no lot with the id ${lotId} to go on from. Give the "next" of the page before, or leave it out.`,
    );
  }
}

function summaryOf(row: SummaryRow): RecallSummaryView {
  return { ...row, chainWide: row.chainWide === 1 };
}

function lotOf({
  reasons,
  held,
  decision,
  decisionReason,
  decidedAt,
  decidedBy,
  ...lot
}: LotRow): RecallLotView {
  return {
    ...lot,
    reasons: JSON.parse(reasons) as MatchReasonView[],
    held: held > 0,
    decision:
      decision === null
        ? null
        : { decision, reason: decisionReason ?? '', occurredAt: decidedAt ?? '', personId: decidedBy },
  };
}
